@NullMarked
package boltlore.report.html;

import org.jspecify.annotations.NullMarked;
