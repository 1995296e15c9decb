package boltlore.cli;

import picocli.CommandLine.IVersionProvider;

/** Which release this is, as the jar says; classes that run without a jar belong to none. */
final class Release implements IVersionProvider {

    @Override
    public String[] getVersion() {
        String version = Release.class.getPackage().getImplementationVersion();
        return new String[] {"boltlore " + (version == null ? "(unreleased)" : version)};
    }
}
