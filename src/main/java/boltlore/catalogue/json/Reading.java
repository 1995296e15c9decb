package boltlore.catalogue.json;

import boltlore.catalogue.EffectivityScale;
import boltlore.json.Faults;
import boltlore.json.Json;
import boltlore.json.ObjectReader;
import boltlore.json.SourceLocation;
import boltlore.measure.PartNumber;
import boltlore.measure.Wording;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What is gathered while the files of one catalogue are read.
 *
 * @param family the family whose files are being read, or empty
 * @param groups options that take several answers, each behind its family
 * @param scales what the effectivities of the family cut into pieces
 */
record Reading(
        Faults faults,
        Names names,
        SourceMap sources,
        String family,
        Set<String> groups,
        List<EffectivityScale> scales) {

    static Reading begin() {
        return new Reading(new Faults(), new Names(), new SourceMap(), "", new HashSet<>(), List.of());
    }

    Reading in(String wantedFamily, List<EffectivityScale> cut) {
        return new Reading(faults, names, sources, wantedFamily, groups, cut);
    }

    /** The text of a required key, which gives something its name. */
    String named(ObjectReader reader, String key, Kind kind) {
        String name = reader.text(key, kind.shape());
        if (name.isEmpty()) {
            names.tear(kind, within(kind));
        } else {
            give(kind, name, reader.spot(key));
        }
        return name;
    }

    /** The text of a required key, which mentions something by its name. */
    String mentioned(ObjectReader reader, String key, Kind kind) {
        String name = reader.text(key, kind.shape());
        if (!name.isEmpty()) {
            mention(kind, name, reader.spot(key));
        }
        return name;
    }

    /** A name that may be told about once here, and that is the name of something else. */
    String namedOnce(ObjectReader reader, String key, Kind once, Kind of) {
        String name = named(reader, key, once);
        if (!name.isEmpty()) {
            mention(of, name, reader.spot(key));
        }
        return name;
    }

    void give(Kind kind, String name, SourceLocation location) {
        names.give(kind, within(kind), name, location, faults);
    }

    @Nullable
    String findMentioned(ObjectReader reader, String key, Kind kind) {
        Optional<String> name = reader.findText(key, kind.shape());
        name.ifPresent(text -> mention(kind, text, reader.spot(key)));
        return name.orElse(null);
    }

    List<String> findAllMentioned(ObjectReader reader, String key, Kind kind) {
        return reader.findTexts(key, kind.shape(), (name, location) -> {
            mention(kind, name, location);
            return name;
        });
    }

    PartNumber part(ObjectReader reader, String key) {
        return new PartNumber(mentioned(reader, key, Kind.PART));
    }

    void mention(Kind kind, String name, SourceLocation location) {
        names.mention(kind, within(kind), name, location);
    }

    void mentionValue(String option, String value, SourceLocation location) {
        names.mention(Kind.VALUE, within(option), value, location);
    }

    void giveValue(String option, String value, SourceLocation location) {
        names.give(Kind.VALUE, within(option), value, location, faults);
    }

    /** Notes that an option of this family takes several answers, so that conditions on it speak of each by itself. */
    void severalOf(String option) {
        groups.add(within(option));
    }

    boolean takesSeveral(String option) {
        return groups.contains(within(option));
    }

    /** A text for customers, in languages of the workshop. */
    Wording wording(ObjectReader reader, String key) {
        Wording wording = reader.wording(key);
        languages(reader, key);
        return wording;
    }

    Optional<Wording> findWording(ObjectReader reader, String key) {
        Optional<Wording> wording = reader.findWording(key);
        languages(reader, key);
        return wording;
    }

    private void languages(ObjectReader reader, String key) {
        reader.member(key).ifPresent(json -> {
            if (json instanceof Json.Obj byLanguage) {
                byLanguage.members().forEach((language, text) -> mention(Kind.LANGUAGE, language, text.location()));
            }
        });
    }

    /** A text of any length under an optional key; empty where it is missing. */
    static String textOrNone(ObjectReader reader, String key) {
        return reader.findText(key).orElse("");
    }

    private String within(Kind kind) {
        return kind.inFamily() ? family : "";
    }

    private String within(String option) {
        return family + "/" + option;
    }

    /** Where each record was written, so that checks across files can say so. */
    static final class SourceMap {

        private final IdentityHashMap<Object, SourceLocation> spots = new IdentityHashMap<>();

        /** The record itself, remembered with its place. */
        <T> T put(T record, SourceLocation location) {
            spots.put(record, location);
            return record;
        }

        /** Whether the record was put, which those that could not be read whole may not be. */
        boolean know(Object record) {
            return spots.containsKey(record);
        }

        /** @throws IllegalArgumentException for a record that was never put */
        SourceLocation of(@Nullable Object record) {
            SourceLocation location = spots.get(record);
            if (location == null) {
                throw new IllegalArgumentException("No place of " + record);
            }
            return location;
        }
    }
}
