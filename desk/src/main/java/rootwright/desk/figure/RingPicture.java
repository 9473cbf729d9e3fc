package rootwright.desk.figure;

import java.math.BigInteger;
import java.util.List;

/**
 * Remainders that come round again, as a ring.
 *
 * @param name what leaves them, in plain notation
 * @param modulus for which they are taken
 * @param first the index of the first member
 * @param members the remainders of one turn
 * @param asked the place in the ring that was asked for, or −1
 */
public record RingPicture(String name, int modulus, int first, List<Integer> members, int asked)
    implements Picture {

  /** Keeps its own copy. */
  public RingPicture {
    members = List.copyOf(members);
  }

  /** The same with the member of this index asked for; nothing is asked for before the ring. */
  RingPicture asking(BigInteger index) {
    BigInteger steps = index.subtract(BigInteger.valueOf(first));
    return steps.signum() < 0
        ? this
        : new RingPicture(
            name,
            modulus,
            first,
            members,
            steps.mod(BigInteger.valueOf(members.size())).intValueExact());
  }

  @Override
  public String kind() {
    return "ring";
  }
}
