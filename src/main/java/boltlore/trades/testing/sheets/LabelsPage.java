package boltlore.trades.testing.sheets;

import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.testing.PlacedLabel;
import boltlore.trades.testing.TestPlan;

/** Which label goes where, one line each. */
final class LabelsPage {

    private LabelsPage() {}

    static PageBuilder of(TestPlan plan, TestWords words) {
        PageBuilder page = Page.named(words.say("page.labels")).title(words.say("labels.title"));
        page.add(FrontPage.brief(plan, words)).note(words.say("labels.intro"));
        TableBuilder table = table(words);
        int number = 1;
        for (PlacedLabel label : plan.labels()) {
            fill(table, number++, label, words);
        }
        return page.add(table);
    }

    private static TableBuilder table(TestWords words) {
        return Table.named("labels")
                .columns(
                        Column.whole("no", words.say("no")),
                        Column.text("says", words.say("labels.says")).atMost(48),
                        Column.text("at", words.say("labels.at")).atMost(30),
                        Column.text("where", words.say("labels.where")).atMost(34),
                        Column.text("mark", words.say("labels.mark")).atMost(24),
                        Column.text("from", words.say("labels.from")),
                        Column.signature("fixed", words.say("labels.fixed")));
    }

    private static void fill(TableBuilder table, int number, PlacedLabel label, TestWords words) {
        String language = words.language();
        table.row()
                .put("no", number)
                .put("says", label.label().says().in(language))
                .put("at", label.at() == null ? words.say("whole") : Places.of(label.at(), words))
                .put("where", label.label().where().in(language))
                .put("mark", label.label().mark())
                .put("from", label.part().number().text());
    }
}
