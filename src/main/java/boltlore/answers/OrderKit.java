package boltlore.answers;

import boltlore.bill.Bill;
import boltlore.bill.BillMaker;
import boltlore.catalogue.Option;
import boltlore.choices.Choices;
import boltlore.faults.Outcome;
import boltlore.findings.Findings;
import boltlore.measure.OptionName;
import boltlore.order.Order;
import boltlore.proof.fits.FitKinds;
import boltlore.resolution.FamilyPlan;
import boltlore.resolution.OrderResolver;
import boltlore.resolution.Resolution;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * An order with what became of it.
 *
 * @param misfits what of its kit does not fit together
 * @param bill null where it has no kit
 */
public record OrderKit(
        Order order,
        Resolution resolution,
        Findings misfits,
        @Nullable Bill bill) {

    /**
     * Resolves an order and explodes its kit.
     *
     * @param takeUsual whether open options take their usual value, which is told as a finding each
     */
    public static Outcome<OrderKit> of(OrderResolver resolver, Order order, boolean takeUsual) {
        List<OptionName> taken = takeUsual ? usualOf(order.choices()) : List.of();
        Order settled = order.withChoices(withUsual(order.choices(), taken));
        return resolver.resolve(settled, taken)
                .then(resolution -> Outcome.sound(new OrderKit(
                        settled,
                        resolution,
                        misfits(resolver, settled, resolution),
                        bill(resolver, settled, resolution))));
    }

    public boolean issuesSheets() {
        return bill != null && !resolution.stops() && !misfits.stops();
    }

    private static Findings misfits(OrderResolver resolver, Order order, Resolution resolution) {
        return resolution instanceof Resolution.Resolved resolved
                ? misfits(resolver.resolver().plan(order.family()).measured(order), resolved)
                : Findings.NONE;
    }

    /**
     * What of a kit does not fit together.
     *
     * @param plan with the order's own measures
     */
    public static Findings misfits(FamilyPlan plan, Resolution.Resolved resolved) {
        return FitKinds.of(plan.catalogue(), resolved.choices(), resolved.kit().leftOut()::contains);
    }

    private static @Nullable Bill bill(OrderResolver resolver, Order order, Resolution resolution) {
        return resolution instanceof Resolution.Resolved resolved
                ? BillMaker.make(resolver.resolver().plan(order.family()), order, resolved)
                : null;
    }

    private static List<OptionName> usualOf(Choices choices) {
        List<OptionName> taken = new ArrayList<>();
        for (Option option : choices.unsettled()) {
            if (option.usual() != null) {
                taken.add(option.name());
            }
        }
        return taken;
    }

    private static Choices withUsual(Choices choices, List<OptionName> taken) {
        Choices result = choices;
        for (Option option : choices.unsettled()) {
            String usual = option.usual();
            if (usual != null && taken.contains(option.name())) {
                result = result.with(option.name(), usual);
            }
        }
        return result;
    }
}
