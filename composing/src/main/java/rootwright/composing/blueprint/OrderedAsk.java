package rootwright.composing.blueprint;

/** One ask of an order, made ready. */
sealed interface OrderedAsk permits CompiledAsk, StatementAsk {

  /**
   * The candidates for it.
   *
   * @param kept how many are worked at most
   * @param seed what chance starts from
   */
  Lot lot(Blueprint blueprint, Judge judge, int kept, long seed);
}
