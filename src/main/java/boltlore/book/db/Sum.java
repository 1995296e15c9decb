package boltlore.book.db;

import boltlore.book.Happening;
import java.util.List;
import org.jdbi.v3.core.Handle;

/** Tables that follow from the journal: what has happened, added up so that questions are answered at once. */
interface Sum {

    /** Its tables, each with the columns of its key: {@code "quotation order_name version"}. */
    List<String> tables();

    /** Adds what an entry says, if it is any of this sum's business. */
    void take(Handle handle, long entry, Happening happening);
}
