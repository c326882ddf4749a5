# Neighbour graphs and clusters of redwoodfull (195 seedlings, Strauss 1975), read from R's package spatstat.data. The expected figures
# were computed with scikit-learn 1.2.1, scipy 1.10, dbscan and spdep; the last two compute them here again.
source(sub("neighbours.R", "figures.R", sub("--file=", "", grep("--file=", commandArgs(FALSE), value = TRUE)[1])))
suppressMessages({
  library(spatstat.data)
  library(dbscan)
  library(spdep)
})
x <- redwoodfull$x
y <- redwoodfull$y
xy <- cbind(x, y)
edges <- function(neighbours) sum(card(neighbours)) / 2

graph <- core("neighbours", places(x, y))
expect_near("Delaunay edges", graph[1], 566, 0)
expect_near("Delaunay edges by spdep", graph[1], edges(tri2nb(xy)), 0)
expect_near("Gabriel edges", graph[2], 330, 0)
expect_near("Gabriel edges by spdep", graph[2], edges(graph2nb(gabrielneigh(xy), sym = TRUE)), 0)
expect_near("length of the minimum spanning tree", graph[3], 7.613691, 5e-7)

single <- hclust(dist(xy), method = "single")
expect_near("length of the minimum spanning tree by single linkage", graph[3], sum(single$height), 1e-8)
expect_near("single linkage cut at .05", core(c("single-linkage", 0.05), places(x, y)), 71, 0)
for (cut in c(0.01, 0.03, 0.05, 0.07, 0.2))
  expect_near(paste("single linkage by hclust, cut at", cut), core(c("single-linkage", cut), places(x, y)),
              max(cutree(single, h = cut)), 0)

dense <- core(c("density-clusters", 0.06, 5), places(x, y))
expect_near("DBSCAN .06, 5: clusters", dense[1], 10, 0)
expect_near("DBSCAN .06, 5: in none", dense[2], 82, 0)
for (radius in c(0.04, 0.05, 0.08)) {
  reference <- dbscan(xy, eps = radius, minPts = 5)$cluster
  dense <- core(c("density-clusters", radius, 5), places(x, y))
  expect_near(paste("DBSCAN by dbscan, clusters at", radius), dense[1], max(reference), 0)
  expect_near(paste("DBSCAN by dbscan, in none at", radius), dense[2], sum(reference == 0), 0)
}
finish()
