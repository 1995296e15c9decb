package boltlore.logic;

import java.math.BigInteger;

/** How many orders there are, exactly; or that counting was given up at its limit. */
public sealed interface Count {

    record Exactly(BigInteger orders) implements Count {}

    record GivenUp(String why) implements Count {}
}
