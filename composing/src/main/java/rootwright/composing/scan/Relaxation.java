package rootwright.composing.scan;

import java.util.List;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.composing.scan.candidate.CoefficientBox;

/** A way to ask for a little less, and what that would give. */
public sealed interface Relaxation {

  /** How many candidates there are then, or were found in a sample. */
  long candidates();

  /** Some of them. */
  List<Polynomial> examples();

  /**
   * One wish is given up and all others stay.
   *
   * @param filter the name of the wish
   * @param explanation its sentence
   */
  record WithoutFilter(
      String filter, String explanation, long candidates, List<Polynomial> examples)
      implements Relaxation {
    /** Keeps its own copy. */
    public WithoutFilter {
      examples = List.copyOf(examples);
    }
  }

  /**
   * One wish is replaced by a weaker one and all others stay.
   *
   * @param filter the name of the wish
   * @param weaker the name of the one in its place
   * @param explanation the sentence of the one in its place
   */
  record WeakerFilter(
      String filter, String weaker, String explanation, long candidates, List<Polynomial> examples)
      implements Relaxation {
    /** Keeps its own copy. */
    public WeakerFilter {
      examples = List.copyOf(examples);
    }
  }

  /**
   * The coefficients may be larger and all wishes stay.
   *
   * @param box the larger box
   */
  record WiderBox(CoefficientBox box, long candidates, List<Polynomial> examples)
      implements Relaxation {
    /** Keeps its own copy. */
    public WiderBox {
      examples = List.copyOf(examples);
    }
  }

  /**
   * What was found in a sample of a box with too many candidates to look at them all again; there
   * are more than were found.
   *
   * @param relaxation what helps, with what was found in the sample
   * @param examined how many candidates were looked at
   * @param all how many the box has
   */
  record InSample(Relaxation relaxation, long examined, long all) implements Relaxation {
    @Override
    public long candidates() {
      return relaxation.candidates();
    }

    @Override
    public List<Polynomial> examples() {
      return relaxation.examples();
    }
  }
}
