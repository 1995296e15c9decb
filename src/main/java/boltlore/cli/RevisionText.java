package boltlore.cli;

import boltlore.catalogue.Catalogue;
import boltlore.explanation.ChangeWords;
import boltlore.logic.Count;
import boltlore.measure.Digits;
import boltlore.measure.PartNumber;
import boltlore.proof.revision.Case;
import boltlore.proof.revision.ExampleKit;
import boltlore.proof.revision.PartChange;
import boltlore.proof.revision.PartEdit;
import boltlore.proof.revision.Revision;
import boltlore.proof.revision.RevisionNote;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import java.util.stream.Collectors;

/** What an edit does to a family's kits, in words. */
final class RevisionText {

    private static final int MOST_CASES = 12;

    private final Screen screen;
    private final Catalogue before;
    private final Catalogue after;
    private final Revision revision;

    private RevisionText(Screen screen, Catalogue before, Catalogue after, Revision revision) {
        this.screen = screen;
        this.before = before;
        this.after = after;
        this.revision = revision;
    }

    static void print(Screen screen, Catalogue before, Catalogue after, String family, Revision revision) {
        screen.heading(family);
        new RevisionText(screen, before, after, revision).print();
    }

    private void print() {
        screen.wrapped(2, sentence());
        if (!revision.newOptions().isEmpty()) {
            screen.wrapped(
                    2,
                    "Only one of the two has " + joined(revision.newOptions())
                            + "; variants are counted over the options of both.");
        }
        one(revision.onlyBefore(), "are no longer valid");
        one(revision.onlyAfter(), "have become valid");
        revision.parts().forEach(change -> {
            screen.wrapped(2, words(change));
            notes(change.part());
        });
        revision.edits().forEach(edit -> {
            screen.wrapped(2, words(edit));
            notes(edit.part());
        });
        revision.example().ifPresent(this::example);
        if (!revision.undecided().isEmpty()) {
            screen.wrapped(2, "Not decided:");
            revision.undecided().forEach((part, why) -> screen.wrapped(4, named(part) + ": " + why));
        }
        if (!revision.unproved().isEmpty()) {
            screen.wrapped(2, "Unproved, because the time was up: " + joined(revision.unproved()));
        }
    }

    private String sentence() {
        String open = revision.decided() ? "" : "As far as it is decided, ";
        if (revision.changed().equals(new Count.Exactly(BigInteger.ZERO))) {
            return open + (open.isEmpty() ? "This" : "this") + " edit changes no kit of the "
                    + ProofText.number(revision.both()) + " variants that are valid in both.";
        }
        return open + (open.isEmpty() ? "This" : "this") + " edit changes " + ProofText.number(revision.changed())
                + " of " + ProofText.number(revision.both()) + " variants" + cases() + ".";
    }

    private String cases() {
        if (revision.cases().isEmpty()) {
            return ", in too many cases to tell";
        }
        List<Case> cases = revision.cases().get();
        if (cases.size() == 1) {
            return cases.get(0).values().isEmpty() ? ", all that there are" : ", all with " + cases.get(0);
        }
        String first = cases.stream().limit(MOST_CASES).map(Case::toString).collect(Collectors.joining("; or "));
        return ", all with " + first + (cases.size() > MOST_CASES ? "; or … (--json names all cases)" : "");
    }

    private void one(Count orders, String what) {
        if (!orders.equals(new Count.Exactly(BigInteger.ZERO))) {
            screen.wrapped(2, ProofText.number(orders) + " variants " + what + ".");
        }
    }

    private String words(PartChange change) {
        String by = change.differences().stream().map(RevisionText::signed).collect(Collectors.joining(" or "));
        return named(change.part()) + ": " + by + " in " + ProofText.number(change.orders());
    }

    private String words(PartEdit edit) {
        String what = edit.what().stream().map(RevisionText::words).collect(Collectors.joining(", "));
        return named(edit.part()) + ": another " + what + " in " + ProofText.number(edit.orders());
    }

    /** Why it changed, as far as somebody has written it down since the earlier revision. */
    private void notes(PartNumber part) {
        List<RevisionNote> notes = revision.notes().getOrDefault(part, List.of());
        notes.forEach(note -> screen.wrapped(4, "note of " + note.of() + ": " + ChangeWords.say(note.change())));
        if (notes.isEmpty()) {
            screen.wrapped(4, "no note says why");
        }
    }

    private static String words(PartEdit.Edit edit) {
        boolean told = !edit.before().isEmpty() && !edit.after().isEmpty();
        return edit.what() + (told ? " (" + edit.after() + ", was " + edit.before() + ")" : "");
    }

    private void example(ExampleKit example) {
        screen.wrapped(
                2,
                "For example, with "
                        + example.order().values().entrySet().stream()
                                .map(choice -> choice.getKey() + "=" + choice.getValue())
                                .collect(Collectors.joining(", "))
                        + ":");
        example.before()
                .forEach((part, was) -> screen.wrapped(
                        4,
                        named(part) + ": " + Digits.plain(was) + " before, "
                                + Digits.plain(example.after().getOrDefault(part, BigDecimal.ZERO)) + " after"));
    }

    private String named(PartNumber part) {
        Catalogue known = after.parts().containsKey(part) ? after : before;
        return part + " " + known.part(part).name().english();
    }

    private static String signed(BigDecimal by) {
        return by.signum() > 0 ? "+" + by.toPlainString() : by.toPlainString();
    }

    private static String joined(List<?> names) {
        return names.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }
}
