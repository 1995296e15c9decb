package boltlore.proof.kinds;

import boltlore.proof.FindingStatements;
import boltlore.proof.StatementKind;
import boltlore.proof.fits.FitKinds;
import java.util.ArrayList;
import java.util.List;

/** Every kind of statement, in the order in which they are asked and told. */
public final class Kinds {

    private static final List<StatementKind> OF_FINDINGS = List.of(
            new Overlap(),
            new Hole(),
            new BracketMissing(),
            new Orphan(),
            new CompanionMissing(),
            new WrongHand(),
            HandsShipped.BOTH,
            HandsShipped.NEITHER,
            new UnequalPair(),
            new InterlockOpen(),
            RoleClash.V2L_OUTLET_OF_ANOTHER_MARKET,
            RoleClash.V2L_OUTLET_NEEDS_BIDIRECTIONAL_CHARGER,
            RoleClash.V2L_OUTLET_ABOVE_CHARGER,
            RoleClash.CHARGER_ABOVE_INLET,
            new Stray(),
            RoleClash.CHARGER_PHASES_ABOVE_INLET,
            RoleClash.CHARGER_PHASES_ABOVE_SUPPLY,
            LeadBelowCharger.PHASES,
            LeadBelowCharger.AMPS,
            RoleClash.INLET_OF_ANOTHER_MARKET,
            RoleClash.DC_INLET_OF_ANOTHER_MARKET,
            RoleClash.LABELS_OF_ANOTHER_MARKET,
            new CableOutsideWindow(),
            new MaskMissing(),
            new LeafWithoutBin());

    private static final List<StatementKind> ALL = inOrder();

    private Kinds() {}

    private static List<StatementKind> inOrder() {
        StatementKind deadLine = new DeadLine();
        StatementKind idleLimit = new IdleLimit();
        StatementKind twinLimits = new TwinLimits();
        List<StatementKind> all = new ArrayList<>();
        all.add(new NoValidOrder());
        all.addAll(OF_FINDINGS);
        all.addAll(FitKinds.all());
        all.add(new UnsafeToLeaveOut(OF_FINDINGS));
        all.add(new ImpossibleValue());
        all.add(new ForcedValue());
        all.add(deadLine);
        all.add(new DeadFigure());
        all.add(new DeadPart());
        all.add(new IdleBracket(deadLine));
        all.add(idleLimit);
        all.add(twinLimits);
        all.add(new ImpliedLimit(idleLimit, twinLimits));
        all.add(new SurePart());
        return List.copyOf(all);
    }

    public static List<StatementKind> all() {
        return ALL;
    }

    /** The kinds that say of one order's findings when orders have them. */
    public static List<FindingStatements> ofFindings() {
        return OF_FINDINGS.stream().map(FindingStatements.class::cast).toList();
    }
}
