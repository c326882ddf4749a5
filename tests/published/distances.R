# Distances from 57 copper deposits to the nearest of 90 lineaments (Berman 1986), read from R's package spatstat.data: mean 1.88116,
# by spatstat.geom, which computes it here again.
source(sub("distances.R", "figures.R", sub("--file=", "", grep("--file=", commandArgs(FALSE), value = TRUE)[1])))
suppressMessages({
  library(spatstat.data)
  library(spatstat.geom)
})
deposits <- copper$SouthPoints
lineaments <- copper$SouthLines
ends <- as.vector(t(as.matrix(lineaments$ends[, c("x0", "y0", "x1", "y1")])))

found <- core(c("to-lines", lineaments$n), c(ends, places(deposits$x, deposits$y)))
expect_near("number of deposits", deposits$n, 57, 0)
expect_near("number of lineaments", lineaments$n, 90, 0)
expect_near("mean distance", found, 1.88116, 5e-6)
expect_near("mean distance by spatstat.geom", found, mean(nncross(deposits, lineaments)$dist), 1e-8)
finish()
