/** What the image is given and packed with for machines other than the one that it was built on. */
package boltlore.distribution;
