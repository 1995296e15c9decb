package boltlore.trades.testing;

import boltlore.catalogue.FoundState;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What became of the tests, in words. */
public final class VerdictWords {

    private final TestWords words;

    /** In that language, or in English. */
    public static VerdictWords in(String language) {
        return new VerdictWords(TestWords.in(language));
    }

    VerdictWords(TestWords words) {
        this.words = words;
    }

    /** One sentence on the whole. */
    public String headline(Verdict verdict) {
        String all = Integer.toString(verdict.rows().size());
        long open = verdict.open().count();
        return open == 0 && verdict.passed()
                ? words.say("report.passed", all)
                : words.say("report.not", Long.toString(open), all);
    }

    /** 'passed', 'failed' … */
    public String verdict(Judgement judgement) {
        if (judgement instanceof Judgement.Passed) {
            return words.say("verdict.passed");
        } else if (judgement instanceof Judgement.Failed) {
            return words.say("verdict.failed");
        } else if (judgement instanceof Judgement.Missing) {
            return words.say("verdict.missing");
        }
        return words.say(judgement instanceof Judgement.NoLimit ? "verdict.noLimit" : "verdict.unreadable");
    }

    /** Why it did not pass; empty where it did. */
    public String why(JudgedRow judged) {
        Judgement judgement = judged.judgement();
        if (judgement instanceof Judgement.Failed failed) {
            return failed(judged, failed);
        } else if (judgement instanceof Judgement.Missing missing) {
            return missing(judged.row(), missing.boxes());
        } else if (judgement instanceof Judgement.Unreadable unreadable) {
            return unreadable.flaws().stream().map(this::flaw).collect(Collectors.joining("; "));
        }
        return judgement instanceof Judgement.NoLimit noLimit
                ? words.say("limit.unknown", words.notKnown(noLimit.what()))
                : "";
    }

    private String failed(JudgedRow judged, Judgement.Failed failed) {
        if (judged.result() == null) {
            String last = judged.readings().get(judged.readings().size() - 1).value();
            return words.say("why.state", state(last));
        }
        return failed.by().signum() == 0
                ? words.say("why.limit")
                : words.say("why.by", words.number(failed.by(), judged.row().unit()));
    }

    /** The state in the words' language, whichever it was written in. */
    private String state(String written) {
        return Arrays.stream(FoundState.values())
                .filter(state -> state.says().byLanguage().containsValue(written.toLowerCase(Locale.ROOT)))
                .findFirst()
                .map(state -> state.says().in(words.language()))
                .orElse(written);
    }

    /** 'not filled in: V1', or that nothing is. */
    String missing(JudgedRow judged) {
        String why = judged.judgement() instanceof Judgement.Missing ? why(judged) : "";
        return why.isEmpty() ? words.say("verdict.missing") : why;
    }

    private String missing(TestRow row, List<Box> boxes) {
        return row.workedOut()
                ? words.say("why.boxes", boxes.stream().map(words::quantity).collect(Collectors.joining("; ")))
                : "";
    }

    String flaw(Flaw flaw) {
        return words.say("flaw." + flaw.kind().name().toLowerCase(Locale.ROOT), flaw.found(), flaw.expected());
    }

    /** What was tested, and where. */
    public String tested(TestRow row) {
        return words.tested(row);
    }

    public String limit(TestRow row) {
        return words.limit(row);
    }

    /** What goes into the box, where it is not the result itself; else empty. */
    public String quantity(Box box) {
        return words.quantity(box);
    }

    /** What was found, with its unit; empty where nobody can say. */
    public String found(JudgedRow judged) {
        if (judged.result() != null) {
            return words.number(judged.result(), judged.row().unit());
        }
        boolean state = judged.row().unit().isEmpty() && !judged.readings().isEmpty();
        List<Reading> readings = judged.readings();
        return state ? state(readings.get(readings.size() - 1).value()) : "";
    }
}
