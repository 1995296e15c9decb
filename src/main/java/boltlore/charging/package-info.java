/** What power passes between supply, inlet, charger and outlet, from the facts of the choices. Knows no part. */
@NullMarked
package boltlore.charging;

import org.jspecify.annotations.NullMarked;
