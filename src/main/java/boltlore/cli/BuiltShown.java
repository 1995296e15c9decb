package boltlore.cli;

import boltlore.book.BuiltNote;
import boltlore.book.BuiltReading;
import boltlore.book.db.Reading;
import boltlore.book.orders.AsBuiltRecord;

/** A kit as it was built, on the screen. */
final class BuiltShown {

    private BuiltShown() {}

    static void of(Screen screen, Reading reading, AsBuiltRecord record) {
        screen.heading(OrderCommand.line(record.order())
                + (record.chassis().isEmpty() ? "" : ", chassis " + record.chassis()));
        record.parts().forEach(part -> screen.wrapped(2, BuiltCommand.line(part)));
        record.notes().forEach(note -> screen.wrapped(2, line(reading, note)));
        record.readings().forEach(each -> screen.wrapped(2, line(reading, each)));
        screen.wrapped(0, record.differences().isEmpty() ? "As designed." : "Differs from what was designed:");
        record.differences().forEach(each -> screen.wrapped(2, each));
    }

    private static String line(Reading reading, BuiltNote note) {
        return "entry " + note.entry() + ": " + note.what() + ", " + note.of() + ": " + note.says() + " ("
                + reading.persons().shown(note.person()) + ")";
    }

    private static String line(Reading reading, BuiltReading read) {
        return "entry " + read.entry() + ": " + read + " (" + reading.persons().shown(read.person()) + ")";
    }
}
