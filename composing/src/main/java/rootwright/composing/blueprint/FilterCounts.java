package rootwright.composing.blueprint;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import rootwright.composing.scan.ScanResult.FilterCount;

/** Counts of the wishes of several scans added up; belongs to one composition. */
final class FilterCounts {

  private final Map<String, FilterCount> counts = new LinkedHashMap<>();

  void add(List<FilterCount> more) {
    for (FilterCount count : more) {
      counts.merge(count.name(), count, FilterCounts::sum);
    }
  }

  private static FilterCount sum(FilterCount one, FilterCount other) {
    return new FilterCount(
        one.name(),
        one.explanation(),
        one.seen() + other.seen(),
        one.rejected() + other.rejected(),
        OptionalLong.empty());
  }

  List<FilterCount> all() {
    return List.copyOf(counts.values());
  }
}
