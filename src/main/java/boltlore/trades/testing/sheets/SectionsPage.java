package boltlore.trades.testing.sheets;

import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.testing.KitSection;
import boltlore.trades.testing.TestPlan;

/** Which sections of which manual the installer needs for this kit, in the order of the work. */
final class SectionsPage {

    private SectionsPage() {}

    static PageBuilder of(TestPlan plan, TestWords words) {
        PageBuilder page = Page.named(words.say("page.manual")).title(words.say("manual.title"));
        page.add(FrontPage.brief(plan, words)).note(words.say("manual.intro"));
        TableBuilder table = Table.named("sections")
                .columns(
                        Column.text("section", words.say("manual.section")),
                        Column.text("says", words.say("manual.says")).atMost(70),
                        Column.text("manual", words.say("manual.manual")).atMost(40),
                        Column.text("part", words.say("part")),
                        Column.tick("done", words.say("manual.done")));
        plan.sections().forEach(section -> fill(table, section, words));
        return page.add(table);
    }

    private static void fill(TableBuilder table, KitSection section, TestWords words) {
        table.row()
                .put("section", section.section().number())
                .put("says", section.section().says().in(words.language()))
                .put("manual", section.manual().name().in(words.language()))
                .put("part", section.manual().number().text());
    }
}
