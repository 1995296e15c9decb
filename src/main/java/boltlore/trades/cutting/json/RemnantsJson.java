package boltlore.trades.cutting.json;

import boltlore.json.JsonOut;
import boltlore.trades.cutting.Remnant;
import java.util.List;

/** Remnants as the file that {@link RemnantsReader} reads. */
public final class RemnantsJson {

    private RemnantsJson() {}

    public static JsonOut of(List<Remnant> remnants) {
        return JsonOut.object()
                .put("$schema", RemnantsReader.SCHEMA)
                .put("remnants", JsonOut.list(remnants, RemnantsJson::remnant));
    }

    static JsonOut remnant(Remnant remnant) {
        return JsonOut.object()
                .put("remnant", remnant.name())
                .put("material", remnant.material())
                .put("lengthMm", remnant.lengthMm())
                .putIfAny("heat", remnant.heat());
    }
}
