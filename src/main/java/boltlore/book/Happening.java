package boltlore.book;

import boltlore.json.JsonOut;

/**
 * Something that happened and that the journal keeps for ever. Each is a record that says itself as data; {@link Happenings}
 * knows how each kind is read back. It names persons by their keys only.
 */
public interface Happening {

    /** What has happened, in a few words, which also tell kinds apart: 'order quoted'. */
    String kind();

    Subject subject();

    /** All that the record holds beside its subject's name. */
    JsonOut.Members data();
}
