package boltlore.exports;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.report.SheetFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Where each file of a run goes. What its kind of run wrote and nobody has touched since is replaced, or removed where it
 * is made no more. What somebody has changed or another kind of run wrote stays, and the new file comes beside it, unless
 * the changed one was made from just that file. What the program never wrote is not in its way, or the run is refused.
 */
final class Plan {

    static final Print NOTHING = Print.of(new byte[0]);

    /** A file that comes, under the name that it gets. */
    record Coming(String name, SheetFile file) {}

    private static final int MOST_NAMED = 5;

    private final Inside folder;
    private final Path shown;
    private final Manifest before;
    private final boolean mayStandBeside;
    private final Print carriedOver;

    private final TreeMap<String, Manifest.Entry> after = new TreeMap<>();
    private final List<Coming> coming = new ArrayList<>();
    private final List<Named> in = new ArrayList<>();
    private final List<Named> out = new ArrayList<>();
    private final List<Path> places = new ArrayList<>();
    private final List<String> kept = new ArrayList<>();
    private final List<Fault> faults = new ArrayList<>();
    private final Set<String> taken = new HashSet<>();

    /**
     * @param shown the folder as the user named it
     * @param mayStandBeside whether a file may get another name than its own
     * @param carriedOver of a file that was read and whose content is all in what comes in its place
     */
    Plan(Inside folder, Path shown, Manifest before, boolean mayStandBeside, Print carriedOver) {
        this.carriedOver = carriedOver;
        this.folder = folder;
        this.shown = shown;
        this.before = before;
        this.mayStandBeside = mayStandBeside;
    }

    Outcome<Plan> of(List<SheetSet> sets) throws IOException {
        after.putAll(before.files());
        for (SheetSet set : sets) {
            for (SheetFile file : set.files()) {
                place(set, file);
            }
        }
        for (SheetSet set : sets) {
            if (set.whole()) {
                removeStale(set.name());
            }
            tellOthers(set);
            tellEarlier(set);
        }
        return faults.isEmpty() ? Outcome.sound(this) : Outcome.faulty(faults);
    }

    /** What stands under a name now; its print where it may be one that is known. */
    private record OnDisk(boolean there, @Nullable Print print) {}

    private OnDisk standing(String name, Print wanted) throws IOException {
        Path path = folder.file(name);
        if (!Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS)) {
            return new OnDisk(Inside.there(path), null);
        }
        long length = Files.size(path);
        Manifest.Entry entry = before.files().get(name);
        boolean known = length == wanted.length()
                || (entry != null && (length == entry.print().length() || length == carriedOver.length()));
        return new OnDisk(true, known ? Print.of(path) : null);
    }

    private void place(SheetSet set, SheetFile file) throws IOException {
        Print print = Print.of(file.content());
        for (int time = 0; ; time++) {
            String name = Named.beside(file.name(), "new", time);
            Manifest.Entry entry = before.files().get(name);
            OnDisk standing = standing(name, print);
            boolean same = print.equals(standing.print());
            Manifest.Entry untouched = entry != null && entry.print().equals(standing.print()) ? entry : null;
            boolean carried = carriedOver.length() > 0 && carriedOver.equals(standing.print());
            boolean ours = entry != null
                    && (untouched != null || carried)
                    && entry.set().equals(set.name());
            boolean free = folder.leadsTo(name) && (!standing.there() || same || ours);
            boolean madeOfThis = entry != null && entry.print().equals(print);
            if (!free && (!mayStandBeside || (entry == null && time == 0) || !folder.leadsTo(name))) {
                faults.add(
                        untouched != null && standing.there()
                                ? Unwritten.others(shown.resolve(name), untouched.set())
                                : Unwritten.wouldLose(shown.resolve(name), entry != null));
                return;
            }
            taken.add(name);
            if (free || madeOfThis) {
                places.add(shown.resolve(name));
                keep(set, file.name(), free ? time : time + 1);
                if (free) {
                    come(new Coming(name, file), entry(set, print, same ? entry : null), standing);
                }
                return;
            }
        }
    }

    /** What stands there already as it is to be stays what it was: the sheet of who wrote it first. */
    private static Manifest.Entry entry(SheetSet set, Print print, Manifest.@Nullable Entry same) {
        return same == null || same.set().equals(set.name())
                ? new Manifest.Entry(set.name(), set.of(), print)
                : new Manifest.Entry(same.set(), same.of(), print);
    }

    private void come(Coming comes, Manifest.Entry entry, OnDisk standing) {
        after.put(comes.name(), entry);
        if (entry.print().equals(standing.print())) {
            return;
        }
        if (standing.print() != null) {
            out.add(new Named(comes.name(), standing.print()));
        }
        coming.add(comes);
        in.add(new Named(comes.name(), entry.print()));
    }

    /** Tells of the first files of that name, which stay; the one behind them is this run's. */
    private void keep(SheetSet set, String name, int staying) throws IOException {
        for (int time = 0; time < staying; time++) {
            String each = Named.beside(name, "new", time);
            Manifest.Entry entry = before.files().get(each);
            if (entry == null) {
                continue;
            }
            Path stays = shown.resolve(each);
            Path newest = places.get(places.size() - 1);
            boolean anothers = !entry.set().equals(set.name()) && entry.print().isOf(folder.file(each));
            String why = anothers
                    ? stays + " was written by '" + entry.set() + "'" + named(entry.of())
                    : stays + " was changed after it was written";
            kept.add(why + ": it stays as it is"
                    + (newest.equals(stays) ? "." : ", and what is new is " + newest.getFileName() + " beside it."));
        }
    }

    private static String named(List<String> of) {
        String few = String.join(", ", of.subList(0, Math.min(MOST_NAMED, of.size())));
        return of.isEmpty() ? "" : " of " + few + (of.size() > MOST_NAMED ? " …" : "");
    }

    /** Sheets of other orders make room for these, but not without a word. */
    private void tellOthers(SheetSet set) {
        before.files().entrySet().stream()
                .filter(entry -> entry.getValue().set().equals(set.name())
                        && !entry.getValue().of().isEmpty()
                        && !entry.getValue().equals(after.get(entry.getKey())))
                .map(entry -> entry.getValue().of())
                .filter(of -> !of.equals(set.of()))
                .distinct()
                .forEach(of -> kept.add("In " + shown + " the sheets" + named(of) + " have made room for those"
                        + named(set.of()) + "."));
    }

    /** What other runs made of these orders says nothing of what has changed in them since. */
    private void tellEarlier(SheetSet set) {
        if (!set.leads() || !(set.files().isEmpty() || changed(set))) {
            return;
        }
        List<String> earlier = before.files().entrySet().stream()
                .filter(entry -> entry.getValue().of().equals(set.of()) && after.containsKey(entry.getKey()))
                .map(Map.Entry::getKey)
                .filter(name -> !taken.contains(name) && name.endsWith(".xlsx"))
                .toList();
        if (!earlier.isEmpty()) {
            kept.add("In " + shown + " " + earlier.size() + (earlier.size() == 1 ? " sheet" : " sheets")
                    + " of the order as it was at an earlier run stay: "
                    + String.join(", ", earlier.subList(0, Math.min(MOST_NAMED, earlier.size())))
                    + (earlier.size() > MOST_NAMED ? " …" : "")
                    + ". Make them anew, or take them away, before anybody works by them.");
        }
    }

    private boolean changed(SheetSet set) {
        return before.files().entrySet().stream()
                .anyMatch(entry -> entry.getValue().set().equals(set.name())
                        && !entry.getValue().equals(after.get(entry.getKey())));
    }

    private void removeStale(String set) throws IOException {
        for (var entry : before.files().entrySet()) {
            String name = entry.getKey();
            if (!entry.getValue().set().equals(set) || taken.contains(name)) {
                continue;
            }
            if (entry.getValue().print().isOf(folder.file(name))) {
                out.add(new Named(name, entry.getValue().print()));
                after.remove(name);
            } else if (!Inside.there(folder.file(name))) {
                after.remove(name);
            } else {
                kept.add(shown.resolve(name)
                        + " was changed after it was written: it stays, though this run makes no such file.");
            }
        }
    }

    List<Coming> coming() {
        return coming;
    }

    Manifest manifest() {
        return new Manifest(after);
    }

    Moves moves() {
        return new Moves(out, in, Print.of(manifest().content()));
    }

    boolean changesNothing() {
        return in.isEmpty() && out.isEmpty() && after.equals(before.files());
    }

    Written written() {
        return new Written(places, kept);
    }
}
