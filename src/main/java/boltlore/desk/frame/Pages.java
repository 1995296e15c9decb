package boltlore.desk.frame;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Writes pages with the templates that were compiled with the program; what they show is escaped for its place. */
final class Pages {

    private final TemplateEngine engine = TemplateEngine.createPrecompiled(ContentType.Html);
    private final List<Room> rooms;

    /**
     * Who looks at a page.
     *
     * @param token of the browser
     * @param signedIn whether there is a session to end
     */
    record Reader(String token, Set<Role> roles, boolean signedIn) {}

    Pages(List<Room> rooms) {
        this.rooms = rooms.stream().filter(room -> !room.says().isEmpty()).toList();
    }

    /** What is shown while there are no rooms yet. */
    String waiting(String says) {
        StringOutput out = new StringOutput();
        engine.render("frame/waiting.jte", says, out);
        return out.toString();
    }

    /** @param path that was asked for, at which the form stands that was refused */
    String write(Answer.Shown shown, String room, Reader reader, Call call, String path) {
        List<Head.Entrance> entrances = rooms.stream()
                .filter(each -> each.role().admits(reader.roles()))
                .map(each -> new Head.Entrance(each.path(), each.says()))
                .toList();
        Head head = new Head(
                shown.title(),
                room,
                entrances,
                reader.token(),
                Guard.random(),
                shown.refused(),
                call,
                reader.signedIn());
        StringOutput out = new StringOutput();
        engine.render(shown.template(), Map.of("head", head, "page", shown.page()), out);
        return shown.fields().isEmpty()
                ? out.toString()
                : new RefusedFields(shown.fields(), call.said()).in(out.toString(), path);
    }
}
