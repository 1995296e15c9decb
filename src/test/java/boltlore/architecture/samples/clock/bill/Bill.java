package boltlore.architecture.samples.clock.bill;

import java.time.LocalDate;
import java.time.ZoneOffset;

public record Bill(LocalDate date) {
    static Bill ofToday() {
        return new Bill(LocalDate.now(ZoneOffset.UTC));
    }
}
