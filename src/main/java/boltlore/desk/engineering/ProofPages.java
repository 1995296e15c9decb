package boltlore.desk.engineering;

import boltlore.book.orders.Bench;
import boltlore.book.orders.Touched;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.choosing.ConflictWords;
import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Call;
import boltlore.desk.frame.Names;
import boltlore.desk.frame.Room.Doors;
import boltlore.desk.frame.Workshop;
import boltlore.faults.Outcome;
import boltlore.logic.Count;
import boltlore.logic.Deadline;
import boltlore.measure.Digits;
import boltlore.measure.PartNumber;
import boltlore.proof.FamilyProof;
import boltlore.proof.Prover;
import boltlore.proof.kinds.Kinds;
import boltlore.proof.revision.PartEdit;
import boltlore.proof.revision.Revision;
import boltlore.proof.revision.Revisions;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;

/** What is true of every order of a family, with orders that show what is not; and what an edit of the catalogue changes. */
public final class ProofPages {

    private static final String EDIT = "engineering/edit.jte";

    /** A page that takes longer has been closed by then. */
    private static final Duration LONGEST = Duration.ofSeconds(20);

    private final Workshop workshop;
    private final Map<String, Proof> proved = new ConcurrentHashMap<>();

    ProofPages(Workshop workshop) {
        this.workshop = workshop;
    }

    void open(Doors doors) {
        doors.look("/engineering/proof/{family}", this::proof);
        doors.look("/engineering/edit", call -> page(call.said("folder"), List.of(), List.of()));
        doors.act("/engineering/edit", this::edit);
    }

    private static Deadline deadline() {
        return Deadline.in(LONGEST.toNanos(), System::nanoTime);
    }

    /** The catalogue of a desk does not change while it is open: a whole proof stands as long. */
    private Answer proof(Call call) {
        Family family = workshop.bench().catalogue().families().get(call.path("family"));
        if (family == null) {
            return new Answer.Missing("There is no family '" + call.path("family") + "' in the catalogue.");
        }
        return Answer.page("Proof of " + family.says().english(), "engineering/proof.jte", proved(family));
    }

    private Proof proved(Family family) {
        Proof known = proved.get(family.name());
        Proof shown = known == null ? prove(family) : known;
        if (shown.whole()) {
            proved.put(family.name(), shown);
        }
        return shown;
    }

    void ahead() {
        workshop.bench().catalogue().families().values().forEach(this::proved);
    }

    private Proof prove(Family family) {
        Catalogue catalogue = workshop.bench().catalogue();
        FamilyProof proof = Prover.prove(catalogue, family, Kinds.all(), deadline(), Prover.Progress.NONE);
        ConflictWords words = new ConflictWords(family);
        return new Proof(
                workshop.names(),
                number(proof.orders()),
                proof.answers().size(),
                proof.only(boltlore.proof.Answer.Proved.class).count(),
                proof.only(boltlore.proof.Answer.SaidAlready.class).count(),
                proof.openDefects().map(defect -> defect(proof, defect, words)).toList(),
                proof.acceptedDefects()
                        .map(defect -> defect(proof, defect, words))
                        .toList(),
                proof.information()
                        .map(note -> note.statement().title() + ". "
                                + note.statement().refuted())
                        .toList(),
                unproved(proof));
    }

    private static List<String> unproved(FamilyProof proof) {
        List<String> open = new ArrayList<>();
        proof.only(boltlore.proof.Answer.Unproved.class)
                .forEach(each -> open.add(each.statement().title()));
        proof.only(boltlore.proof.Answer.NotDecided.class)
                .forEach(each -> open.add(each.statement().title() + ": " + each.why()));
        return open;
    }

    private static Defect defect(FamilyProof proof, boltlore.proof.Answer.Defect defect, ConflictWords words) {
        return new Defect(
                defect.statement().kind().severity().says(),
                defect.statement().title(),
                defect.statement().refuted(),
                number(defect.touched().orders()),
                defect.statement().kind().mend(),
                defect.witness().map(order -> example(order, words)).orElse(""),
                proof.acceptance(defect).map(accepted -> accepted.because()).orElse(""));
    }

    /** The order that shows a defect, as its questions were answered. */
    private static String example(Choices order, ConflictWords words) {
        return order.values().entrySet().stream()
                .map(choice -> words.says(new Choice(choice.getKey(), choice.getValue())))
                .collect(Collectors.joining("; "));
    }

    private static String number(Count count) {
        return count instanceof Count.Exactly exactly
                ? String.format(Locale.ROOT, "%,d", exactly.orders())
                : "an unknown number of";
    }

    private Answer edit(Call call) {
        String folder = call.said("folder");
        Outcome<Edited> edited =
                EditedFolder.of(workshop.bench().folder(), folder).then(path -> edited(path, call));
        return edited instanceof Outcome.Sound<Edited> sound
                ? Answer.page("What an edit changes", EDIT, sound.value())
                : page(folder, List.of(), List.of()).refused(edited.faults());
    }

    private Answer.Shown page(String folder, List<OfFamily> families, List<OrderTouched> orders) {
        return Answer.page("What an edit changes", EDIT, edited(folder, families, orders));
    }

    private Edited edited(String folder, List<OfFamily> families, List<OrderTouched> orders) {
        Path own = workshop.bench().folder();
        return new Edited(
                workshop.names(),
                own.toAbsolutePath().normalize().getFileName().toString(),
                EditedFolder.beside(own),
                folder,
                families,
                orders);
    }

    private Outcome<Edited> edited(Path folder, Call call) {
        return EditedFolder.read(
                        () -> CatalogueReader.readTogether(workshop.bench().folder(), folder))
                .then(both -> Touched.by(workshop.book(), Bench.of(both.after(), folder), call.today())
                        .then(touched -> Outcome.sound(edited(
                                folder.toString(),
                                both.after().families().keySet().stream()
                                        .map(family -> family(both.before(), both.after(), family))
                                        .toList(),
                                touched.stream()
                                        .map(each -> new OrderTouched(
                                                each.order().name(),
                                                each.order().state().written(),
                                                each.what()))
                                        .toList()))));
    }

    private static OfFamily family(Catalogue before, Catalogue after, String family) {
        if (!before.families().containsKey(family)) {
            return new OfFamily(says(after, family), "Only the edited catalogue has it.", List.of());
        }
        Revision revision = Revisions.compare(before, after, family, deadline());
        List<String> changes = new ArrayList<>();
        revision.parts()
                .forEach(change -> changes.add(named(after, before, change.part()) + ": "
                        + change.differences().stream()
                                .map(each -> (each.signum() > 0 ? "+" : "") + Digits.plain(each))
                                .collect(Collectors.joining(" or "))
                        + " in " + number(change.orders())));
        revision.edits()
                .forEach(part -> changes.add(named(after, before, part.part()) + ": another "
                        + part.what().stream().map(ProofPages::words).collect(Collectors.joining(", ")) + " in "
                        + number(part.orders())));
        revision.undecided().forEach((part, why) -> changes.add(named(after, before, part) + ": not decided, " + why));
        revision.unproved().forEach(part -> changes.add(named(after, before, part) + ": not reached in time"));
        return new OfFamily(
                says(after, family),
                "Kits of " + number(revision.changed()) + " of " + number(revision.both())
                        + " variants change; " + number(revision.onlyBefore()) + " are no longer valid, "
                        + number(revision.onlyAfter()) + " have become valid.",
                changes);
    }

    private static String says(Catalogue catalogue, String family) {
        return catalogue.family(family).says().english();
    }

    private static String words(PartEdit.Edit edit) {
        boolean told = !edit.before().isEmpty() && !edit.after().isEmpty();
        return edit.what() + (told ? " (" + edit.after() + ", was " + edit.before() + ")" : "");
    }

    private static String named(Catalogue after, Catalogue before, PartNumber part) {
        return part + " "
                + (after.parts().containsKey(part) ? after : before)
                        .part(part)
                        .name()
                        .english();
    }

    /**
     * What was proved of a family.
     *
     * @param orders how many valid ones there are, in words
     * @param said how many were not asked because a defect says them already
     * @param notes what is good to know of some orders
     * @param open what was not decided or not reached in time
     */
    public record Proof(
            Names names,
            String orders,
            int statements,
            long proved,
            long said,
            List<Defect> defects,
            List<Defect> accepted,
            List<String> notes,
            List<String> open) {

        boolean whole() {
            return open.isEmpty();
        }
    }

    /** Something that is not true of every order. */
    public record Defect(
            String severity, String title, String says, String orders, String mend, String example, String accepted) {}

    /**
     * What an edit changes, and which orders hold something that it touches.
     *
     * @param own name of the folder that the desk was opened with
     * @param known folders beside it that hold a catalogue
     */
    public record Edited(
            Names names,
            String own,
            List<String> known,
            String folder,
            List<OfFamily> families,
            List<OrderTouched> orders) {}

    /** What it changes in one family. */
    public record OfFamily(String family, String says, List<String> changes) {}

    /** An order that holds something that it touches. */
    public record OrderTouched(String order, String state, List<String> what) {}
}
