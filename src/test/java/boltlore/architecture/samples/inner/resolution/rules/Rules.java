package boltlore.architecture.samples.inner.resolution.rules;

import boltlore.architecture.samples.inner.resolution.Resolver;
import java.util.List;

public record Rules(List<Resolver> resolvers) {
    Resolver first() {
        return resolvers.get(0);
    }
}
