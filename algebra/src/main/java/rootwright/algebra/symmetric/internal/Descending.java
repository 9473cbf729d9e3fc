package rootwright.algebra.symmetric.internal;

import java.util.Arrays;

/** A queue that hands out the greatest word first: a binary heap. */
final class Descending {

  private long[] heap = new long[16];
  private int size;

  boolean isEmpty() {
    return size == 0;
  }

  void enter(long key) {
    if (size == heap.length) {
      heap = Arrays.copyOf(heap, 2 * size);
    }
    int place = size++;
    while (place > 0 && heap[(place - 1) / 2] < key) {
      heap[place] = heap[(place - 1) / 2];
      place = (place - 1) / 2;
    }
    heap[place] = key;
  }

  long next() {
    long greatest = heap[0];
    long moved = heap[--size];
    int place = 0;
    while (2 * place + 1 < size) {
      int child = 2 * place + 1;
      if (child + 1 < size && heap[child + 1] > heap[child]) {
        child++;
      }
      if (heap[child] <= moved) {
        break;
      }
      heap[place] = heap[child];
      place = child;
    }
    heap[place] = moved;
    return greatest;
  }
}
