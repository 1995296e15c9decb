/**
 * What comes with the program to be read: the handbook's pages from the Markdown in {@code src/doc}, the reference of the
 * catalogue from its schemas, a man page a command and the shells' completion from the model of the command line. It runs
 * when the image is built, and its tests hold what it says against the program.
 */
package boltlore.handbook;
