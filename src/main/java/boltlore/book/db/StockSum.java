package boltlore.book.db;

import boltlore.book.Happening;
import boltlore.book.Held;
import boltlore.book.StockHappening;
import java.math.BigDecimal;
import java.util.List;
import org.jdbi.v3.core.Handle;

/** What lies in the stores, what is kept for orders, what orders have got. Quantities that are 0 have no row. */
final class StockSum implements Sum {

    @Override
    public List<String> tables() {
        return List.of(
                "stock part finish lot serial bin",
                "reservation order_name part finish",
                "issued_part order_name part finish lot serial bin instead concession",
                "received_serial part serial",
                "built_in entry");
    }

    @Override
    public void take(Handle handle, long entry, Happening happening) {
        if (happening instanceof StockHappening.Received received) {
            add(handle, received.held(), received.quantity());
            serial(handle, entry, received);
        } else if (happening instanceof StockHappening.Unreceived wrong) {
            unreceive(handle, wrong);
        } else if (happening instanceof StockHappening.Issued issued) {
            add(handle, issued.held(), issued.quantity().negate());
            issue(handle, entry, issued, issued.quantity());
        } else if (happening instanceof StockHappening.Returned returned) {
            add(handle, returned.held(), returned.quantity());
            giveBack(handle, entry, returned);
        } else if (happening instanceof StockHappening.Moved moved) {
            add(handle, moved.held(), moved.quantity().negate());
            add(handle, moved.held().in(moved.to()), moved.quantity());
        } else if (happening instanceof StockHappening.Counted counted) {
            add(handle, counted.held(), counted.counted().subtract(counted.booked()));
        } else if (happening instanceof StockHappening.Scrapped scrapped) {
            add(handle, scrapped.held(), scrapped.quantity().negate());
        } else if (happening instanceof StockHappening.BuiltIn builtIn) {
            add(handle, builtIn.held(), builtIn.quantity().negate());
            handle.execute(
                    "insert into built_in (entry, part, lot, serial, into_part) values (?, ?, ?, ?, ?)",
                    entry,
                    builtIn.held().part(),
                    builtIn.held().lot(),
                    builtIn.held().serial(),
                    builtIn.into());
        } else if (happening instanceof StockHappening.Coated coated) {
            add(handle, coated.held(), coated.quantity().negate());
            add(handle, coated.held().finished(coated.to()), coated.quantity());
        } else if (happening instanceof StockHappening.Reserved reserved) {
            reserve(handle, reserved);
        }
    }

    private static void unreceive(Handle handle, StockHappening.Unreceived wrong) {
        add(handle, wrong.held(), wrong.quantity().negate());
        handle.execute(
                "delete from received_serial where part = ? and serial = ? and entry = ?",
                wrong.held().part(),
                wrong.held().serial(),
                wrong.receipt());
    }

    private static void add(Handle handle, Held held, BigDecimal more) {
        BigDecimal sum = Stock.lying(handle, held).add(more);
        handle.execute(
                "delete from stock where part = ? and finish = ? and lot = ? and serial = ? and bin = ?",
                held.part(),
                held.finish(),
                held.lot(),
                held.serial(),
                held.bin());
        if (sum.signum() != 0) {
            handle.execute(
                    "insert into stock (part, finish, lot, serial, bin, quantity) values (?, ?, ?, ?, ?, ?)",
                    held.part(),
                    held.finish(),
                    held.lot(),
                    held.serial(),
                    held.bin(),
                    plain(sum));
        }
    }

    /** The same digits whatever the order of additions was. */
    static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }

    private static void serial(Handle handle, long entry, StockHappening.Received received) {
        if (!received.held().serial().isEmpty()) {
            handle.execute(
                    "insert into received_serial (part, serial, purchase, entry) values (?, ?, ?, ?)"
                            + " on conflict (part, serial) do nothing",
                    received.held().part(),
                    received.held().serial(),
                    received.purchase(),
                    entry);
        }
    }

    private static void issue(Handle handle, long entry, StockHappening.Issued issued, BigDecimal more) {
        Held held = issued.held();
        BigDecimal before = handle.createQuery("select quantity from issued_part where order_name = ? and part = ?"
                        + " and finish = ? and lot = ? and serial = ? and bin = ? and instead = ? and concession = ?")
                .bind(0, issued.order())
                .bind(1, held.part())
                .bind(2, held.finish())
                .bind(3, held.lot())
                .bind(4, held.serial())
                .bind(5, held.bin())
                .bind(6, issued.instead())
                .bind(7, issued.concession())
                .mapTo(String.class)
                .findOne()
                .map(BigDecimal::new)
                .orElse(BigDecimal.ZERO);
        write(handle, entry, issued, before.add(more));
    }

    private static void write(Handle handle, long entry, StockHappening.Issued issued, BigDecimal sum) {
        Held held = issued.held();
        handle.execute(
                "delete from issued_part where order_name = ? and part = ? and finish = ? and lot = ? and serial = ?"
                        + " and bin = ? and instead = ? and concession = ?",
                issued.order(),
                held.part(),
                held.finish(),
                held.lot(),
                held.serial(),
                held.bin(),
                issued.instead(),
                issued.concession());
        if (sum.signum() > 0) {
            handle.execute(
                    "insert into issued_part (order_name, part, finish, lot, serial, bin, instead, concession, quantity,"
                            + " entry) values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                    issued.order(),
                    held.part(),
                    held.finish(),
                    held.lot(),
                    held.serial(),
                    held.bin(),
                    issued.instead(),
                    issued.concession(),
                    plain(sum),
                    entry);
        }
    }

    /** What comes back is taken off what went out of the same lot, the newest first, whatever bin it came from. */
    private static void giveBack(Handle handle, long entry, StockHappening.Returned returned) {
        BigDecimal left = returned.quantity();
        List<StockHappening.Issued> all = new Stock(handle).issuedTo(returned.order());
        for (int i = all.size() - 1; i >= 0 && left.signum() > 0; i--) {
            StockHappening.Issued issued = all.get(i);
            boolean same = issued.held().in("").equals(returned.held().in(""))
                    && issued.instead().equals(returned.instead());
            if (same) {
                BigDecimal taken = issued.quantity().min(left);
                write(handle, entry, issued, issued.quantity().subtract(taken));
                left = left.subtract(taken);
            }
        }
    }

    private static void reserve(Handle handle, StockHappening.Reserved reserved) {
        handle.execute(
                "delete from reservation where order_name = ? and part = ? and finish = ?",
                reserved.order(),
                reserved.held().part(),
                reserved.held().finish());
        if (reserved.quantity().signum() > 0) {
            handle.execute(
                    "insert into reservation (order_name, part, finish, quantity) values (?, ?, ?, ?)",
                    reserved.order(),
                    reserved.held().part(),
                    reserved.held().finish(),
                    plain(reserved.quantity()));
        }
    }
}
