package boltlore.trades.picking.sheets;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Cautions in a word or two: before their sentence at the head of a sheet, and beside the part they belong to. */
final class CautionWords {

    private static final Map<String, String> LEADS = Map.of("lift-two", "Two-person lift");

    private CautionWords() {}

    /** 'High voltage', 'Two-person lift'. */
    static String lead(String code) {
        String words = code.replace('-', ' ');
        return LEADS.getOrDefault(code, Character.toUpperCase(words.charAt(0)) + words.substring(1));
    }

    /** 'high voltage, two-person lift'. */
    static String beside(List<String> codes) {
        return codes.stream()
                .map(CautionWords::lead)
                .map(lead -> Character.toLowerCase(lead.charAt(0)) + lead.substring(1))
                .collect(Collectors.joining(", "));
    }
}
