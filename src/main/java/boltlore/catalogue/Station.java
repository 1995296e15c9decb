package boltlore.catalogue;

import org.jspecify.annotations.Nullable;

/**
 * Where a mass sits in the vehicle.
 *
 * @param behindFrontMm distance of its middle behind the front axle; below 0 ahead of it
 * @param heightMm of its middle above the road; null where nobody measured
 */
public record Station(int behindFrontMm, @Nullable Integer heightMm) {}
