package boltlore.cli;

import boltlore.catalogue.Option;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.choosing.Aim;
import boltlore.choosing.BestKit;
import boltlore.choosing.ChoiceState;
import boltlore.choosing.Conflict;
import boltlore.choosing.ConflictWords;
import boltlore.choosing.Opening;
import boltlore.choosing.json.BestKitJson;
import boltlore.choosing.json.ChoiceStateJson;
import boltlore.choosing.json.ConflictJson;
import boltlore.choosing.json.OpeningJson;
import boltlore.json.JsonOut;
import boltlore.logic.Deadline;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** The answers of 'choose', as text or JSON, each with its exit code. */
final class ChoiceAnswers {

    private final Screen screen;
    private final ChoosingSession choosing;
    private final boolean json;
    private final boolean all;
    private final boolean cost;
    private final Choices choices;
    private final ConflictWords words;

    ChoiceAnswers(Screen screen, ChoosingSession choosing, boolean json, boolean all, boolean cost) {
        this.screen = screen;
        this.choosing = choosing;
        this.json = json;
        this.all = all;
        this.cost = cost;
        this.choices = choosing.choices();
        this.words = new ConflictWords(choices.family());
    }

    int look() {
        return withSound(sound -> {
            if (json) {
                print(foot(ChoiceStateJson.encode(choosing.chooser(), sound, choosing.importance())));
            } else {
                new JobCard(screen, choosing).print(sound, all);
            }
        });
    }

    /** The figures at the foot, each null where there is none; those that took too long are named. */
    private JsonOut foot(JsonOut.Members card) {
        List<String> late = new ArrayList<>();
        card.put(
                "orders",
                inTime(
                        "orders",
                        late,
                        () -> ConflictJson.count(choosing.questions().count(choices))));
        card.put("cheapest", inTime("cheapest", late, () -> best(Aim.CHEAPEST, choices)));
        card.put("dearest", inTime("dearest", late, () -> best(Aim.DEAREST, choices)));
        return card.putIfAny("notInTime", late);
    }

    private JsonOut inTime(String name, List<String> late, Supplier<JsonOut> figure) {
        choosing.time().begin();
        try {
            return figure.get();
        } catch (Deadline.Passed e) {
            late.add(name);
            return JsonOut.nothing();
        }
    }

    /** Answers of choices that some order keeps; else what they contradict. */
    private int withSound(Consumer<ChoiceState.Sound> answer) {
        if (choosing.chooser().standing(choices) instanceof ChoiceState.Sound sound) {
            answer.accept(sound);
            return Exit.OK;
        }
        return contradicted();
    }

    private JsonOut best(Aim aim, Choices keeping) {
        return choosing.best()
                .best(aim, keeping)
                .<JsonOut>map(BestKitJson::encode)
                .orElseGet(JsonOut::nothing);
    }

    private JsonOut.Members json(BestKit kit) {
        JsonOut.Members members = BestKitJson.encode(kit);
        return cost
                ? members.put("costCurrency", kit.pricing().costed().currency().getCurrencyCode())
                        .put("directCost", kit.pricing().costed().totals().cost())
                        .putIfAny(
                                "fullCost",
                                kit.pricing()
                                        .found()
                                        .map(found -> found.cost().total())
                                        .orElse(null))
                : members;
    }

    private int contradicted() {
        List<Conflict> conflicts = conflicts(List.of());
        if (!json) {
            conflicts.forEach(conflict -> screen.wrapped(0, words.contradiction(conflict)));
            screen.flush();
        }
        choosing.time().begin();
        try {
            Opening mending = choosing.repairer().mending(choices, choosing.importance());
            if (json) {
                print(ConflictJson.encode(conflicts).put("repairs", OpeningJson.encode(mending)));
            } else {
                mending(conflicts, mending);
            }
        } catch (Deadline.Passed e) {
            notMended(conflicts, e);
        }
        return Exit.STOPPED;
    }

    private void notMended(List<Conflict> conflicts, Deadline.Passed why) {
        if (json) {
            print(ConflictJson.encode(conflicts)
                    .put("repairs", JsonOut.nothing())
                    .put("repairsNotFound", why.why()));
        } else {
            screen.wrapped(0, "No change that helps was found, because " + why.why() + ".");
        }
    }

    /** What is said already is not said twice. */
    private void mending(List<Conflict> told, Opening mending) {
        if (mending instanceof Opening.Impossible impossible && told.contains(impossible.conflict())) {
            boolean firm = !impossible.conflict().choices().isEmpty();
            screen.wrapped(0, firm ? "No change helps: these choices are fixed." : "No change of choices helps.");
        } else {
            new OpeningText(screen, words).print(Optional.empty(), mending, all);
        }
    }

    private List<Conflict> conflicts(List<Choice> wanted) {
        List<Conflict> every = all
                ? choosing.chooser()
                        .allConflicts(choices, wanted, choosing.importance())
                        .conflicts()
                : List.of();
        return every.isEmpty() ? List.of(conflict(wanted)) : every;
    }

    private Conflict conflict(List<Choice> wanted) {
        return wanted.isEmpty()
                ? choosing.chooser().conflict(choices, choosing.importance())
                : choosing.chooser().whyClosed(choices, wanted.get(0), choosing.importance());
    }

    int why(Choice asked) {
        return withSound(sound -> {
            if (sound.isOpen(asked)) {
                open(sound, asked);
            } else {
                closed(asked);
            }
        });
    }

    private void closed(Choice asked) {
        List<Conflict> conflicts = conflicts(List.of(asked));
        told(
                "not available",
                conflicts,
                conflicts.stream()
                        .map(conflict -> words.closed(asked, conflict))
                        .toList());
    }

    private void open(ChoiceState.Sound sound, Choice asked) {
        Option option = choices.family().option(asked.option()).orElseThrow();
        if (sound.forced(option).isPresent()) {
            Conflict conflict = choosing.chooser().whyForced(choices, asked, choosing.importance());
            told("forced", List.of(conflict), List.of(words.forced(asked, conflict)));
        } else {
            boolean chosen = choices.value(asked.option()).isPresent();
            String sentence = words.says(asked) + (chosen ? " is chosen." : " is available.");
            told(chosen ? "chosen" : "available", List.of(), List.of(sentence));
        }
    }

    private void told(String state, List<Conflict> conflicts, List<String> sentences) {
        if (json) {
            print(ConflictJson.encode(conflicts).put("state", state).put("sentences", JsonOut.texts(sentences)));
        } else {
            sentences.forEach(sentence -> screen.wrapped(0, sentence));
        }
    }

    int opening(Choice wanted) {
        Opening opening = choosing.repairer().opening(choices, wanted, choosing.importance());
        if (json) {
            print(OpeningJson.encode(opening));
        } else {
            new OpeningText(screen, words).print(Optional.of(wanted), opening, all);
        }
        boolean helped = opening instanceof Opening.Repairs || opening instanceof Opening.AlreadyOpen;
        return helped ? Exit.OK : Exit.STOPPED;
    }

    int best(Aim aim) {
        return choosing.chooser().standing(choices) instanceof ChoiceState.Contradicted
                ? contradicted()
                : choosing.best().best(aim, choices).map(this::best).orElseGet(this::stopped);
    }

    private int best(BestKit kit) {
        if (json) {
            print(json(kit));
        } else {
            BestKitText.print(screen, choices, kit, cost);
        }
        return Exit.OK;
    }

    private int stopped() {
        screen.wrapped(0, "Each kit that keeps these choices has a finding that stops its sheets.");
        return Exit.STOPPED;
    }

    private void print(JsonOut out) {
        screen.line(out.written().stripTrailing());
    }
}
