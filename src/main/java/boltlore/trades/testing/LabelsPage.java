package boltlore.trades.testing;

import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.TableSpec;
import java.util.List;
import java.util.stream.IntStream;

/** Which label goes where, one line each. */
final class LabelsPage {

    private LabelsPage() {}

    static PageBuilder compose(TestPlan plan, TestWords words) {
        PageBuilder page = Page.named(words.say("page.labels")).title(words.say("labels.title"));
        page.add(FrontPage.brief(plan, words)).note(words.say("labels.intro"));
        List<PlacedLabel> labels = plan.labels();
        return page.add(TableSpec.<Integer>named("labels")
                .whole("no", words.say("no"), "", at -> at + 1)
                .text(
                        "text",
                        words.say("labels.says"),
                        48,
                        at -> labels.get(at).label().says().in(words.language()))
                .text(
                        "on-part",
                        words.say("labels.at"),
                        30,
                        at -> words.place(labels.get(at).at()))
                .text(
                        "where",
                        words.say("labels.where"),
                        34,
                        at -> labels.get(at).label().where().in(words.language()))
                .text(
                        "mark",
                        words.say("labels.mark"),
                        24,
                        at -> labels.get(at).label().mark().in(words.language()))
                .text(
                        "label-part",
                        words.say("labels.from"),
                        at -> labels.get(at).part().number().text())
                .box(Column.signature("fixed", words.say("labels.fixed")))
                .of(IntStream.range(0, labels.size()).boxed().toList()));
    }
}
