package boltlore.trades.mounting;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Mounting.Mount;
import boltlore.choices.Choices;
import boltlore.findings.Finding;
import boltlore.findings.Severity;
import boltlore.logic.Any;
import boltlore.proof.FamilyView;
import boltlore.proof.KitView;
import boltlore.proof.PossibleFinding;
import boltlore.proof.Statement;
import boltlore.proof.StatementKind;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What may be wrong with the bolts of a mount, asked of every valid order, so that the engineer hears of it before a customer
 * does. What a mount bears of its load needs the mass of a whole kit, and is tried.
 */
public final class MountKinds {

    private MountKinds() {}

    /** The kinds: bolts weaker than the mount is judged with, other bolts, and bolts that nobody names. */
    public static List<StatementKind> all() {
        return Stream.of(
                        MountingFinding.MOUNT_BOLTS_WEAKER_IN_KIT,
                        MountingFinding.MOUNT_BOLTS_OTHER_IN_KIT,
                        MountingFinding.MOUNT_BOLTS_NOT_NAMED)
                .<StatementKind>map(OfKind::new)
                .toList();
    }

    private record OfKind(MountingFinding kind) implements StatementKind {

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
            return "No valid order has '" + kind.code() + "'.";
        }

        @Override
        public String mend() {
            return "Correct 'mounts' in driving.json, or what the positions under 'at' bring into these kits.";
        }

        @Override
        public List<Statement> statements(FamilyView family) {
            return bolted(family.kept())
                    .map(mount -> statement(family.kept(), mount))
                    .toList();
        }

        private static Stream<Mount> bolted(KitView kit) {
            return kit.family().driving().mounting().mounts().stream()
                    .filter(mount -> mount.bolts() != null)
                    .filter(mount -> !new MountBolts(kit, mount, MountFigures.declared(mount)).shared());
        }

        private Statement statement(KitView kit, Mount mount) {
            MountBolts bolts = new MountBolts(kit, mount, MountFigures.declared(mount));
            String says =
                    MountFigures.bolts(mount, List.of()).map(Finding::says).orElse(mount.says());
            return new PossibleFinding(mount.name(), "", when(mount, bolts), bolts.lineNames(), says).statement(this);
        }

        private Optional<Condition> when(Mount mount, MountBolts bolts) {
            boolean named = !MountFigures.declared(mount).at().isEmpty();
            return switch (kind) {
                case MOUNT_BOLTS_WEAKER_IN_KIT -> named ? bolts.weaker() : Optional.of(Any.NEVER);
                case MOUNT_BOLTS_OTHER_IN_KIT -> named ? bolts.others() : Optional.of(Any.NEVER);
                default -> Optional.of(named ? Any.NEVER : bolts.there());
            };
        }

        /** As the mounting sheet of that order tells it. */
        @Override
        public String refutedBy(Statement statement, Catalogue catalogue, Choices order) {
            KitView kit = KitView.of(catalogue, order, line -> false);
            return bolted(kit)
                    .filter(mount -> mount.name().equals(statement.subject()))
                    .flatMap(mount ->
                            MountFigures.bolts(
                                    mount, new MountBolts(kit, mount, MountFigures.declared(mount)).settled())
                                    .stream())
                    .map(Finding::says)
                    .findFirst()
                    .orElse(statement.refuted());
        }
    }
}
