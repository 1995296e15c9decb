/** The desk as people use it: in a real browser, and as other sites and programs would like to use it. */
package boltlore.desk;
