package boltlore.oracle;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;

/** What the worked example must come to, from its own file. */
record Expected(JsonNode json) {

    static Expected read(Path file) {
        try {
            return new Expected(new ObjectMapper().readTree(file.toFile()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Expected order(String name) {
        return at("orders").at(name);
    }

    Expected at(String key) {
        if (!json.has(key)) {
            throw new IllegalArgumentException("Not expected: " + key);
        }
        return new Expected(json.get(key));
    }

    int number(String key) {
        return at(key).json.intValue();
    }

    BigDecimal decimal(String key) {
        return new BigDecimal(at(key).json.textValue());
    }

    List<String> texts(String key) {
        List<String> texts = new ArrayList<>();
        at(key).json.forEach(text -> texts.add(text.textValue()));
        return texts;
    }

    SortedMap<String, BigDecimal> quantities() {
        return map("quantities", quantity -> new BigDecimal(quantity.textValue()).stripTrailingZeros());
    }

    SortedMap<String, Integer> counts(String key) {
        return map(key, JsonNode::intValue);
    }

    SortedMap<String, List<String>> lists(String key) {
        return map(key, list -> {
            List<String> texts = new ArrayList<>();
            list.forEach(text -> texts.add(text.textValue()));
            return texts;
        });
    }

    /** 'finding: subject'. */
    SortedSet<String> findings() {
        SortedSet<String> findings = new TreeSet<>();
        at("findings").json.forEach(finding -> findings.add(said(finding)));
        return findings;
    }

    /** 'finding: subject' with the number of variants that it touches. */
    SortedMap<String, Integer> findingsOverAllVariants() {
        SortedMap<String, Integer> counts = new TreeMap<>();
        at("findingsOverAllVariants")
                .json
                .forEach(finding ->
                        counts.put(said(finding), finding.get("variants").intValue()));
        return counts;
    }

    private static String said(JsonNode finding) {
        return finding.get("finding").textValue() + ": "
                + finding.get("subject").textValue();
    }

    private <T> SortedMap<String, T> map(String key, Function<JsonNode, T> value) {
        SortedMap<String, T> map = new TreeMap<>();
        for (Map.Entry<String, JsonNode> entry : at(key).json.properties()) {
            map.put(entry.getKey(), value.apply(entry.getValue()));
        }
        return map;
    }
}
