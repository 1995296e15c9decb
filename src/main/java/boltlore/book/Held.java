package boltlore.book;

import boltlore.json.JsonOut;
import boltlore.json.ObjectReader;
import boltlore.json.TextShape;

/**
 * What lies together in the stores and is told apart from all else.
 *
 * @param finish that it lies there in, or empty
 * @param lot maker's lot; of a part that was cut, the heat of its bar; or empty
 * @param serial number of the one piece, or empty
 * @param bin where it lies, or empty where nobody has said
 */
public record Held(String part, String finish, String lot, String serial, String bin) {

    /** Without lot, serial number and finish. */
    public static Held of(String part, String bin) {
        return new Held(part, "", "", "", bin);
    }

    public Held in(String otherBin) {
        return new Held(part, finish, lot, serial, otherBin);
    }

    public Held finished(String otherFinish) {
        return new Held(part, otherFinish, lot, serial, bin);
    }

    JsonOut.Members json() {
        return JsonOut.object()
                .putIfAny("finish", finish)
                .putIfAny("lot", lot)
                .putIfAny("serial", serial)
                .putIfAny("bin", bin);
    }

    static Held read(String part, ObjectReader reader) {
        return new Held(
                part,
                reader.findText("finish", TextShape.LINE).orElse(""),
                reader.findText("lot", TextShape.LINE).orElse(""),
                reader.findText("serial", TextShape.LINE).orElse(""),
                reader.findText("bin", TextShape.LINE).orElse(""));
    }

    /** 'PX-12 in signal-red, lot 4711, serial number 8, bin C-01-02-A-03'. */
    @Override
    public String toString() {
        return part
                + (finish.isEmpty() ? "" : " in " + finish)
                + (lot.isEmpty() ? "" : ", lot " + lot)
                + (serial.isEmpty() ? "" : ", serial number " + serial)
                + (bin.isEmpty() ? "" : ", bin " + bin);
    }
}
