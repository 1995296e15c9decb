package boltlore.answers;

import boltlore.catalogue.Need;

/** Says how many a need asks for, and its reason. */
final class NeedWords {

    private NeedWords() {}

    static String say(Need need) {
        String because = need.because().isEmpty() ? "" : ": " + need.because();
        if (need.ask() instanceof Need.AtJoint at) {
            return "needs at least " + at.atLeast().toPlainString() + ", shared at joint " + at.joint() + because;
        }
        return "needs " + ((Need.Each) need.ask()).quantity().toPlainString() + " for each" + because;
    }
}
