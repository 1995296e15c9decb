/** What all pages stand in, tried without a browser. */
package boltlore.desk.frame;
