package boltlore.cli;

/** Which release this is, as the jar says; classes that run without a jar belong to none. */
final class Release {

    private Release() {}

    static String name() {
        String version = Release.class.getPackage().getImplementationVersion();
        return "boltlore " + (version == null ? "(unreleased)" : version);
    }
}
