package boltlore.book.orders;

import boltlore.book.KitDifference;
import boltlore.book.QuotedVersion;
import boltlore.book.db.Reading;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.Json;
import boltlore.json.JsonFile;
import boltlore.json.JsonOut;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What differs between two versions of an order's quotation, from what the book has kept of both.
 *
 * @param said what the order says otherwise
 * @param sameCatalogue false where the catalogue was another one, so that the difference is not of the order alone
 */
public record VersionsDiffer(
        QuotedVersion before, QuotedVersion after, List<Said> said, KitDifference kit, boolean sameCatalogue) {

    /**
     * Something that an order says otherwise.
     *
     * @param place in its file, as 'choices/drive-unit'
     * @param before as the file had it; 'nothing' where it did not
     */
    public record Said(String place, String before, String after) {

        /** 'choices/drive-unit: 90-kw, then 120-kw'. */
        @Override
        public String toString() {
            return place + ": " + before + ", then " + after;
        }
    }

    /** Two versions of one order. */
    public static Outcome<VersionsDiffer> of(Reading reading, String order, int before, int after) {
        return version(reading, order, before)
                .then(one -> version(reading, order, after).then(other -> Outcome.sound(of(reading, one, other))));
    }

    private static VersionsDiffer of(Reading reading, QuotedVersion one, QuotedVersion other) {
        return new VersionsDiffer(
                one,
                other,
                said(
                        reading.contents().of(one.stands().order()),
                        reading.contents().of(other.stands().order())),
                KitDifference.of(
                        reading.orders().lines(one.stands().kit()),
                        reading.orders().lines(other.stands().kit())),
                one.stands().catalogue().equals(other.stands().catalogue()));
    }

    private static Outcome<QuotedVersion> version(Reading reading, String order, int version) {
        List<QuotedVersion> all = reading.orders().quotations(order);
        return all.stream()
                .filter(each -> each.version() == version)
                .findFirst()
                .map(Outcome::sound)
                .orElseGet(() -> Outcome.faulty(Fault.of(
                        "order " + order,
                        "no version " + version,
                        all.isEmpty() ? "a quoted order" : "a version from 1 to " + all.size(),
                        "'boltlore order versions " + order + "' lists them.")));
    }

    /** Every value of two order files that differs, by its place. */
    static List<Said> said(byte[] before, byte[] after) {
        SortedMap<String, String> was = flat(before);
        SortedMap<String, String> is = flat(after);
        TreeSet<String> places = new TreeSet<>(was.keySet());
        places.addAll(is.keySet());
        List<Said> said = new ArrayList<>();
        for (String place : places) {
            String first = was.getOrDefault(place, "nothing");
            String second = is.getOrDefault(place, "nothing");
            if (!first.equals(second)) {
                said.add(new Said(place, first, second));
            }
        }
        return said;
    }

    private static SortedMap<String, String> flat(byte[] content) {
        SortedMap<String, String> flat = new TreeMap<>();
        if (JsonFile.parse("order", content) instanceof Outcome.Sound<Json> sound) {
            flat(sound.value(), "", flat);
        }
        return flat;
    }

    private static void flat(Json json, String place, SortedMap<String, String> flat) {
        if (json instanceof Json.Obj object) {
            object.members().forEach((key, member) -> flat(member, place.isEmpty() ? key : place + "/" + key, flat));
        } else if (json instanceof Json.Arr array) {
            for (int i = 0; i < array.items().size(); i++) {
                flat(array.items().get(i), place + "/" + (i + 1), flat);
            }
        } else if (json instanceof Json.Text text) {
            flat.put(place, text.text());
        } else {
            flat.put(place, JsonOut.of(json).writtenInLine());
        }
    }

    public JsonOut.Members json() {
        return JsonOut.object()
                .put("before", OrderJson.quotation(before))
                .put("after", OrderJson.quotation(after))
                .put("said", JsonOut.texts(said.stream().map(Said::toString).toList()))
                .put("kit", JsonOut.list(kit.changes(), KitDifference.Change::json))
                .put("sameCatalogue", sameCatalogue);
    }
}
