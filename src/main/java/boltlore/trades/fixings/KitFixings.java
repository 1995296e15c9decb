package boltlore.trades.fixings;

import boltlore.bill.Bill;
import java.util.List;

/**
 * The fixings of one order.
 *
 * @param joints in the order of the bill
 * @param bags in fitting order
 * @param remarks what must be looked at, by joint
 */
public record KitFixings(Bill bill, List<BoltedJoint> joints, List<BagCount> bags, List<Remarked> remarks) {

    /** Whether a joint is wrong. */
    public boolean stops() {
        return !stopping().isEmpty();
    }

    /** What is wrong, a sentence each. */
    public List<String> stopping() {
        return remarks.stream()
                .filter(remark -> remark.verdict() == Verdict.WRONG)
                .map(Remarked::says)
                .toList();
    }
}
