package boltlore.answers.json;

import boltlore.findings.Finding;
import boltlore.findings.Findings;
import boltlore.json.JsonOut;
import boltlore.report.json.ReportJson;
import boltlore.resolution.FindingKind;
import boltlore.resolution.rules.RuleSentences;
import boltlore.trades.FoundBy;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Findings as JSON. */
public final class FindingJson {

    private FindingJson() {}

    public static JsonOut encode(Findings findings) {
        return JsonOut.list(findings.all(), ReportJson::finding);
    }

    /** Those of all trades in one list, each with who found it. */
    public static JsonOut encode(List<FoundBy> found) {
        List<JsonOut> all = new ArrayList<>();
        for (FoundBy by : found) {
            for (Finding finding : by.findings().all()) {
                all.add(ReportJson.finding(finding).put("by", by.by()).putIfAny("rule", rule(finding)));
            }
        }
        return JsonOut.list(all);
    }

    /** The rule that concludes such findings, in its own words. */
    private static @Nullable String rule(Finding finding) {
        return finding.kind() instanceof FindingKind kind
                ? RuleSentences.say(kind).orElse(null)
                : null;
    }
}
