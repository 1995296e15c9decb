package boltlore.desk.frame;

import java.util.List;

/**
 * What the layout needs beside the page itself.
 *
 * @param room path of the room that the page belongs to
 * @param rooms those that may be entered
 * @param token proves that a form came from a page of this desk
 * @param once a new one for each page that is shown, so that a form which is sent twice is done once
 * @param refused what was not done, and why
 * @param call what was asked or said, for fields that were refused
 * @param signedIn whether there is a session to end
 */
public record Head(
        String title,
        String room,
        List<Entrance> rooms,
        String token,
        String once,
        List<String> refused,
        Call call,
        boolean signedIn) {

    /** A room in the row of rooms. */
    public record Entrance(String path, String says) {
        public boolean leadsTo(String room) {
            return path.equals(room);
        }
    }

    /** Whether a box was ticked in a form that was refused, or else as it usually is. */
    public boolean ticked(String field, String value, boolean usual) {
        return refused.isEmpty() ? usual : call.all(field).contains(value);
    }

    /** What was typed into one of several fields of a name, by its place on the page; empty where nothing was. */
    public String typed(String field, int at) {
        List<String> all = refused.isEmpty() ? List.of() : call.all(field);
        return at < all.size() ? all.get(at) : "";
    }

    /** What was typed into a field that was refused, or else what is usual. */
    public String typed(String field, String usual) {
        return refused.isEmpty() ? usual : call.said(field);
    }

    /** A new one for each form: the same form sent twice is done once. */
    public String key() {
        return Guard.random();
    }

    public String who() {
        return call.by().name();
    }
}
