package boltlore.desk.frame;

import java.time.LocalDate;
import java.util.function.Function;

/** The pages of one room. It knows what it shows and which calls of the book it makes, and nothing of the web. */
public interface Room {

    /** Who works here. */
    Role role();

    /** The beginning of all its paths, as "/stores"; its first page stands there. */
    String path();

    /** In the row of rooms, as "Stores"; empty where other pages lead here. */
    String says();

    /** Says which call is answered by which page. */
    void open(Doors doors);

    /**
     * Works out beforehand what somebody will ask for soon, while nobody asks; changes nothing. Called once, in the
     * background, when the desk has opened.
     */
    default void ahead(LocalDate today) {}

    /** What stands at a path. Names in braces, as "/stores/part/{part}", are handed on. */
    interface Doors {

        /** A page that changes nothing, however often it is looked at. */
        void look(String path, Function<Call, Answer> answer);

        /** What a form says. It came from a page of this desk: that is looked at before. */
        void act(String path, Function<Call, Answer> answer);
    }
}
