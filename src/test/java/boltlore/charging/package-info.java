/** Tests of charging power. */
package boltlore.charging;
