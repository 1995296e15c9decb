package boltlore.desk.frame;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.List;
import java.util.Map;

/** Writes pages with the templates that were compiled with the program; what they show is escaped for its place. */
final class Pages {

    private final TemplateEngine engine = TemplateEngine.createPrecompiled(ContentType.Html);
    private final List<Head.Entrance> entrances;

    Pages(List<Room> rooms) {
        this.entrances = rooms.stream()
                .filter(room -> !room.says().isEmpty())
                .map(room -> new Head.Entrance(room.path(), room.says()))
                .toList();
    }

    String write(Answer.Shown shown, String room, String token, Call call) {
        Head head = new Head(shown.title(), room, entrances, token, Guard.random(), shown.refused(), call);
        StringOutput out = new StringOutput();
        engine.render(shown.template(), Map.of("head", head, "page", shown.page()), out);
        return out.toString();
    }

    String failed(String title, String says, String token, Call call) {
        return write(Answer.page(title, "frame/failed.jte", says), "", token, call);
    }
}
