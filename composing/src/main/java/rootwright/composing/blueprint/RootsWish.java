package rootwright.composing.blueprint;

import java.util.List;
import rootwright.composing.scan.filter.CandidateFilter;
import rootwright.composing.scan.filter.DistinctRoots;
import rootwright.composing.scan.filter.ExactTests;
import rootwright.composing.scan.filter.Irreducible;
import rootwright.composing.scan.filter.NoRationalRoot;

/** What the roots of a composed polynomial are to be like. */
public enum RootsWish {
  /** Any roots. */
  ANY {
    @Override
    List<CandidateFilter> filters(ExactTests exact) {
      return List.of();
    }
  },
  /** No root repeated. */
  DISTINCT {
    @Override
    List<CandidateFilter> filters(ExactTests exact) {
      return List.of(new DistinctRoots(exact));
    }
  },
  /** Distinct, and none of them rational, so that they cannot be read off. */
  NO_RATIONAL_ROOT {
    @Override
    List<CandidateFilter> filters(ExactTests exact) {
      return List.of(new DistinctRoots(exact), new NoRationalRoot(exact));
    }
  },
  /** The polynomial does not factor over the rational numbers. */
  IRREDUCIBLE {
    @Override
    List<CandidateFilter> filters(ExactTests exact) {
      return List.of(new Irreducible(exact));
    }
  };

  abstract List<CandidateFilter> filters(ExactTests exact);
}
