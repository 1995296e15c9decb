package boltlore.trades.testing;

import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.TableSpec;

/** Which sections of which manual the installer needs for this kit, in the order of the work. */
final class SectionsPage {

    private SectionsPage() {}

    static PageBuilder compose(TestPlan plan, TestWords words) {
        PageBuilder page = Page.named(words.say("page.manual")).title(words.say("manual.title"));
        page.add(FrontPage.brief(plan, words)).note(words.say("manual.intro"));
        return page.add(TableSpec.<KitSection>named("sections")
                .text(
                        "section",
                        words.say("manual.section"),
                        each -> each.section().number())
                .text(
                        "says",
                        words.say("manual.says"),
                        70,
                        each -> each.section().says().in(words.language()))
                .text(
                        "manual",
                        words.say("manual.manual"),
                        40,
                        each -> each.manual().name().in(words.language()))
                .text("part", words.say("part"), each -> each.manual().number().text())
                .box(Column.tick("done", words.say("manual.done")))
                .of(plan.sections()));
    }
}
