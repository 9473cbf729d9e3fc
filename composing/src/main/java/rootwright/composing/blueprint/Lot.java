package rootwright.composing.blueprint;

import java.util.List;
import rootwright.composing.scan.ScanResult;

/** The candidates for one ask of an order, in an order that a seed settles. */
interface Lot {

  /**
   * Hands candidates to the picker until it has so many, nothing is left, enough were worked, or
   * somebody stops it.
   *
   * @param wanted how many the whole order wants, for those who are told
   */
  Outcome run(Picker picker, int until, ComposingControl control, int wanted);

  /**
   * What became of a lot.
   *
   * @param counts how many candidates each wish saw and turned away before any was worked
   * @param exhausted whether there are no other candidates
   */
  record Outcome(List<ScanResult.FilterCount> counts, boolean exhausted) {}
}
