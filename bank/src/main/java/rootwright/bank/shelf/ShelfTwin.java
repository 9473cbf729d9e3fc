package rootwright.bank.shelf;

import rootwright.composing.twin.Twin;

/**
 * A problem on the shelf to which another one is related.
 *
 * @param entry the problem on the shelf
 * @param twin how the other one is related to it
 */
public record ShelfTwin(ShelfEntry entry, Twin twin) {}
