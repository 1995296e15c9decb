package boltlore.resolution;

import boltlore.catalogue.BuildDate;
import boltlore.catalogue.BuildDates;
import boltlore.catalogue.Option;
import boltlore.choices.Choices;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.findings.Kind;
import boltlore.measure.OptionName;
import boltlore.order.Extra;
import boltlore.order.Order;
import boltlore.order.Waiver;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/** Resolves a whole order: its choices, then what the order itself adds: build date, waivers, extras. */
public final class OrderResolver {

    private final Resolver resolver;
    private final List<Kind> others;

    public OrderResolver(Resolver resolver) {
        this(resolver, List.of());
    }

    /** @param others kinds of findings that orders may waive beside those of the rules */
    public OrderResolver(Resolver resolver, Collection<Kind> others) {
        this.resolver = resolver;
        this.others = List.copyOf(others);
    }

    public Resolver resolver() {
        return resolver;
    }

    /**
     * Resolves the order.
     *
     * @param usualTaken options whose usual value was put in on request; told for information
     * @return faulty where it leaves out what cannot be left out, or waives what cannot be waived
     */
    public Outcome<Resolution> resolve(Order order, List<OptionName> usualTaken) {
        List<Fault> wrongWaivers = Waivers.faults(order, others);
        Outcome<Resolution> outcome = resolver.resolve(order.choices(), order.leftOut());
        if (!wrongWaivers.isEmpty()) {
            List<Fault> all = new ArrayList<>(wrongWaivers);
            all.addAll(outcome.faults());
            return Outcome.faulty(all);
        }
        return outcome.then(resolution -> Outcome.sound(withOrder(resolution, order, usualTaken)));
    }

    private static Resolution withOrder(Resolution resolution, Order order, List<OptionName> usualTaken) {
        SortedSet<Finding> findings = new TreeSet<>(resolution.findings());
        findings.addAll(againstBuildDate(order));
        if (resolution instanceof Resolution.Resolved) {
            order.extra().forEach(extra -> findings.add(extra(extra)));
        }
        usualTaken.forEach(option -> findings.add(new Finding(
                FindingKind.USUAL_TAKEN,
                option.text(),
                order.choices().value(option).orElse(""))));
        for (Waiver waiver : order.waived()) {
            Waivers.apply(waiver, findings);
        }
        return resolution.withFindings(findings);
    }

    private static List<Finding> againstBuildDate(Order order) {
        BuildDate built = order.donorBuilt();
        if (built == null) {
            return List.of();
        }
        List<Finding> findings = new ArrayList<>();
        Choices choices = order.choices();
        for (Option option : choices.family().options()) {
            String value = choices.value(option.name()).orElse("");
            List<BuildDates> then = option.builtFrom().stream()
                    .filter(dates -> dates.meets(built))
                    .toList();
            boolean against = !then.isEmpty()
                    && then.stream().noneMatch(dates -> dates.value().equals(value));
            if (against && !value.isEmpty()) {
                findings.add(new Finding(FindingKind.ERA_AGAINST_BUILD_DATE, value, built.toString()));
            }
        }
        return findings;
    }

    private static Finding extra(Extra extra) {
        String subject = extra.part() != null ? extra.part().text() : extra.says();
        return new Finding(FindingKind.EXTRA, subject, extra.reason());
    }
}
