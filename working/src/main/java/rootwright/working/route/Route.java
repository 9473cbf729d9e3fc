package rootwright.working.route;

import rootwright.working.ask.Asked;

/** A route for asks about the roots of one polynomial with numbers for coefficients. */
public interface Route extends RouteOn<Asked> {}
