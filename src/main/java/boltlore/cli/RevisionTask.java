package boltlore.cli;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.faults.Fault;
import boltlore.json.JsonOut;
import boltlore.logic.Deadline;
import boltlore.proof.json.RevisionJson;
import boltlore.proof.revision.Revision;
import boltlore.proof.revision.Revisions;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Says which kits of some families an edit of the catalogue changes. */
record RevisionTask(Catalogue before, Catalogue after, List<Family> families) implements ProofTask {

    @Override
    public Done done(Deadline until, ProofProgress progress) {
        Map<String, Revision> revisions = new LinkedHashMap<>();
        for (Family family : families) {
            progress.of(family.name());
            if (before.families().containsKey(family.name())) {
                revisions.put(family.name(), Revisions.compare(before, after, family.name(), until));
            }
        }
        List<String> fresh = families.stream()
                .map(Family::name)
                .filter(name -> !revisions.containsKey(name))
                .toList();
        return new Compared(before, after, revisions, fresh);
    }

    /** @param fresh families that only the later catalogue has */
    private record Compared(Catalogue before, Catalogue after, Map<String, Revision> revisions, List<String> fresh)
            implements Done {

        @Override
        public JsonOut json() {
            return JsonOut.object()
                    .put(
                            "families",
                            JsonOut.list(
                                    revisions.entrySet(), each -> RevisionJson.encode(each.getKey(), each.getValue())))
                    .put("newFamilies", JsonOut.texts(fresh));
        }

        @Override
        public void print(Screen screen) {
            revisions.forEach((family, revision) -> RevisionText.print(screen, before, after, family, revision));
            fresh.forEach(family -> screen.line(family + ": the earlier catalogue has no such family."));
        }

        @Override
        public int exit() {
            return revisions.values().stream().allMatch(Revision::decided) ? Exit.OK : Exit.UNDECIDED;
        }

        @Override
        public List<Fault> faults() {
            return List.of();
        }
    }
}
