package rootwright.architecture.planted.cycle.hen;

import rootwright.architecture.planted.cycle.egg.Egg;

/** Planted to be found: knows the egg, which knows the hen. */
public record Hen(Egg laid) {}
