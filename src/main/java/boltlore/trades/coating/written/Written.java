package boltlore.trades.coating.written;

import boltlore.faults.Fault;

/**
 * Something written down, with its place for whoever has to mend it.
 *
 * @param place JSON pointer, or column of a table
 */
record Written<T>(T value, String file, int line, String place) {

    Fault fault(String found, String expected, String advice) {
        return new Fault(file, line, place, found, expected, advice);
    }
}
