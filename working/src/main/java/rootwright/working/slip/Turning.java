package rootwright.working.slip;

import rootwright.working.ask.Asked;

/** A slip on an ask about the roots of one polynomial with numbers for coefficients. */
public interface Turning extends SlipOn<Asked> {}
