package boltlore.cli;

import boltlore.answers.OrderKit;
import boltlore.bill.Bill;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Line;
import boltlore.choices.Choices;
import boltlore.choices.Conditions;
import boltlore.faults.Outcome;
import boltlore.findings.Finding;
import boltlore.findings.Kind;
import boltlore.findings.Severity;
import boltlore.json.JsonOut;
import boltlore.logic.Count;
import boltlore.logic.Deadline;
import boltlore.logic.ValidOrders;
import boltlore.order.LeftOut;
import boltlore.order.Order;
import boltlore.proof.Answer;
import boltlore.proof.Cause;
import boltlore.proof.FamilyProof;
import boltlore.proof.FamilyView;
import boltlore.proof.PossibleFinding;
import boltlore.proof.Statement;
import boltlore.proof.StatementKind;
import boltlore.proof.Touched;
import boltlore.proof.Witnesses;
import boltlore.proof.sample.Sampler;
import boltlore.trades.KitInWork;
import boltlore.trades.Trade;
import boltlore.trades.TradeOption.Given;
import boltlore.trades.TradeResult;
import boltlore.trades.orders.Trades;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What the trades that carry people find in a few kits of a family: every pair of values that any valid order has is in
 * one of them, and every line. Their figures come of whole kits, so that they are tried and not proved.
 *
 * @param kits how many were made and looked at
 * @param complete false where the time was up before every pair and every line was in one
 * @param found each kind of finding about each subject, with the first kit that has it
 */
record TrialKits(Family family, int kits, boolean complete, List<Answer.Defect> found) {

    /** Joints, axle loads, top speed of the motor, brakes, coolant, mounts, the bench's limits. */
    private static final Set<String> OF_TRADES =
            Set.of("fixings", "axle-loads", "driving", "braking", "cooling", "mounting", "test");

    /** What these want looked at is the catalogue's, and not what one vehicle, its customer or its way of travel makes of it. */
    private static final Set<String> LOOKED_AT = Set.of("fixings", "driving", "cooling", "mounting");

    private record Found(Finding finding, Choices first, int kits) {}

    /** A kind of a trade's finding, as proofs tell what they refute. */
    private record Tried(Kind kind) implements StatementKind {

        @Override
        public String name() {
            return kind.code();
        }

        @Override
        public Severity severity() {
            return kind.severity();
        }

        @Override
        public String holds() {
            return "No trial kit has '" + name() + "'.";
        }

        @Override
        public String mend() {
            return "Mend what 'boltlore kit' says of the example order.";
        }

        @Override
        public boolean leavesOutUnused() {
            return true;
        }

        @Override
        public List<Statement> statements(FamilyView family) {
            return List.of();
        }
    }

    static TrialKits of(CatalogueSession session, FamilyProof proof, Deadline until) {
        Family family = proof.family();
        if (proof.orders() instanceof Count.Exactly exactly && exactly.orders().signum() == 0) {
            return new TrialKits(family, 0, true, List.of());
        }
        List<Choices> trials = new ArrayList<>();
        boolean complete = drawn(session, family, until, trials);
        List<List<Finding>> each = trials.parallelStream()
                .map(choices -> until.passed() ? List.<Finding>of() : toMend(session, choices))
                .toList();
        Map<String, Found> found = new LinkedHashMap<>();
        for (int i = 0; i < trials.size(); i++) {
            Choices choices = trials.get(i);
            each.get(i)
                    .forEach(finding -> found.merge(
                            finding.kind().code() + ": " + finding.subject(),
                            new Found(finding, choices, 1),
                            (first, again) -> new Found(first.finding(), first.first(), first.kits() + 1)));
        }
        return new TrialKits(
                family,
                trials.size(),
                complete && !until.passed(),
                found.values().stream()
                        .filter(one -> !refuted(one.finding(), proof))
                        .map(one -> defect(one, trials.size(), proof))
                        .toList());
    }

    /** Whether a proof says it already, of all orders that have it. */
    private static boolean refuted(Finding finding, FamilyProof proof) {
        return proof.defects()
                .map(Answer.Defect::statement)
                .anyMatch(statement ->
                        statement.kind().name().equals(finding.kind().code())
                                && statement.subject().equals(finding.subject()));
    }

    /** All pairs, then whatever lines are in none of those kits; false where the time was up. */
    private static boolean drawn(CatalogueSession session, Family family, Deadline until, List<Choices> trials) {
        try {
            boolean pairs = Sampler.draw(family, 2, until)
                    .map(sample -> trials.addAll(sample.orders()) && sample.complete())
                    .orElse(false);
            FamilyView view = FamilyView.of(session.catalogue(), family, until);
            ValidOrders valid = new ValidOrders(family, family.limits(), until);
            for (Line line : family.lines().toList()) {
                Condition in = view.kept().kit().in(line.name());
                if (trials.stream().noneMatch(choices -> Conditions.holds(in, choices))) {
                    valid.witness(in).ifPresent(trials::add);
                }
            }
            return pairs;
        } catch (Deadline.Passed e) {
            return false;
        }
    }

    private static List<Finding> toMend(CatalogueSession session, Choices choices) {
        Order order = Witnesses.complete(
                session.catalogue(),
                choices.family().name() + "-trial",
                choices,
                new LeftOut.AllUnused(),
                "A trial kit.");
        Bill bill = OrderKit.of(session.resolver(), order, false) instanceof Outcome.Sound<OrderKit> kit
                ? kit.value().bill()
                : null;
        if (bill == null) {
            return List.of();
        }
        KitInWork kit =
                new KitInWork(session.plan(choices.family().name()), bill, LocalDate.now(ZoneId.systemDefault()));
        return Trades.ALL.stream()
                .filter(trade -> OF_TRADES.contains(trade.name()))
                .flatMap(trade -> findings(trade, kit)
                        .filter(finding -> finding.stops()
                                || (finding.severity() == Severity.CHECK && LOOKED_AT.contains(trade.name()))))
                .toList();
    }

    private static Stream<Finding> findings(Trade trade, KitInWork kit) {
        return trade.work(List.of(kit), Given.NONE) instanceof Outcome.Sound<List<TradeResult>> sound
                ? sound.value().stream().flatMap(result -> result.findings().all().stream())
                : Stream.of();
    }

    private static Answer.Defect defect(Found found, int kits, FamilyProof proof) {
        Finding finding = found.finding();
        Statement statement = new PossibleFinding(
                        finding.subject(),
                        "",
                        Optional.empty(),
                        List.of(),
                        "In " + found.kits() + " of " + kits + " trial kits. " + finding.says())
                .statement(new Tried(finding.kind()));
        Count notCounted = new Count.GivenUp("it was tried in " + kits + " kits");
        return new Answer.Defect(
                statement,
                Optional.of(found.first()),
                Cause.NONE,
                List.of(),
                new Touched(notCounted, proof.orders(), ""));
    }

    /** The proof with what was found besides. */
    FamilyProof with(FamilyProof proof) {
        List<Answer> answers = new ArrayList<>(proof.answers());
        answers.addAll(found);
        return new FamilyProof(proof.family(), proof.kinds(), proof.orders(), answers);
    }

    String says() {
        return kits + " trial kits with every pair of values and every line that a valid order has"
                + (complete ? "" : ", as far as the time went") + ": "
                + (found.isEmpty() ? "none has a finding of " : "findings, told above, of ")
                + String.join(", ", names()) + ".";
    }

    private static List<String> names() {
        return Trades.ALL.stream().map(Trade::name).filter(OF_TRADES::contains).toList();
    }

    JsonOut json() {
        return JsonOut.object()
                .put("kits", kits)
                .put("complete", complete)
                .put("trades", JsonOut.texts(names()))
                .put("found", found.size());
    }
}
