package rootwright.desk.figure;

/**
 * One member of the sequence of power sums.
 *
 * @param exponent k in S_k
 * @param value S_k, exact, in plain notation
 * @param asked whether this is the one that was asked for
 */
public record PicturedSum(int exponent, String value, boolean asked) {}
