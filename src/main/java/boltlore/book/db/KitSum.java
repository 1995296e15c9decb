package boltlore.book.db;

import boltlore.book.ChangeHappening;
import boltlore.book.Happening;
import boltlore.book.KitLine;
import boltlore.book.KitLines;
import boltlore.book.OrderHappening;
import java.util.List;
import org.jdbi.v3.core.Handle;

/** The lines of every kit that was quoted or proposed; orders with the same kit share them. */
final class KitSum implements Sum {

    @Override
    public List<String> tables() {
        return List.of("kit_line kit line");
    }

    @Override
    public void take(Handle handle, long entry, Happening happening) {
        if (happening instanceof OrderHappening.Quoted quoted) {
            lay(handle, quoted.stands().kit());
        } else if (happening instanceof ChangeHappening.Proposed proposed) {
            lay(handle, proposed.stands().kit());
        } else if (happening instanceof ChangeHappening.ServiceAdded added) {
            lay(handle, added.kit());
        }
    }

    private static void lay(Handle handle, String kit) {
        boolean known = handle.createQuery("select 1 from kit_line where kit = ? limit 1")
                .bind(0, kit)
                .mapTo(Integer.class)
                .findOne()
                .isPresent();
        if (known) {
            return;
        }
        try (var batch = handle.prepareBatch("insert into kit_line (kit, line, level, position, part, revision, finish,"
                + " quantity, unit, source, picked, tracked, drawing, issue)"
                + " values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)")) {
            int number = 0;
            for (KitLine line : KitLines.read(kit, new Contents(handle).of(kit))) {
                batch.add(
                        kit,
                        ++number,
                        line.level(),
                        line.position(),
                        line.part(),
                        line.revision(),
                        line.finish(),
                        line.quantity().toPlainString(),
                        line.unit(),
                        line.source(),
                        line.picked() ? 1 : 0,
                        line.tracked(),
                        line.drawing(),
                        line.issue());
            }
            batch.execute();
        }
    }
}
