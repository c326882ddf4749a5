# Fisher 1993, Statistical Analysis of Circular Data, data sets B3 (76 turtles) and B13 (termite mounds, axial), read from R's package
# circular. Printed: turtles 64.17 degrees, resultant .4971; termite mounds set 1 0.64 degrees, .721; set 13 1.83 degrees, .924.
source(sub("bearings.R", "figures.R", sub("--file=", "", grep("--file=", commandArgs(FALSE), value = TRUE)[1])))
suppressMessages(library(circular))

turtles <- core("mean-bearing", as.numeric(fisherB3))
expect_near("turtles, mean direction", turtles[1], 64.17, 0.005)
expect_near("turtles, resultant length", turtles[2], 0.4971, 0.00005)
printed <- list(set1 = c(0.64, 0.721), set13 = c(1.83, 0.924))
for (set in names(printed)) {
  mounds <- core("mean-axis", as.numeric(fisherB13[[set]]))
  expect_near(paste("termite mounds,", set, "mean axis"), mounds[1], printed[[set]][1], 0.005)
  expect_near(paste("termite mounds,", set, "resultant length"), mounds[2], printed[[set]][2], 0.0005)
}

# and to all digits what the package itself computes
second <- circular(as.numeric(fisherB3), units = "degrees")
expect_near("turtles, mean direction by circular", turtles[1], as.numeric(mean(second)) %% 360, 1e-7)
expect_near("turtles, resultant length by circular", turtles[2], as.numeric(rho.circular(second)), 1e-8)
for (set in names(fisherB13)) {
  doubled <- circular(2 * as.numeric(fisherB13[[set]]), units = "degrees")
  mounds <- core("mean-axis", as.numeric(fisherB13[[set]]))
  expect_near(paste("termite mounds,", set, "by circular"), mounds[1], (as.numeric(mean(doubled)) %% 360) / 2, 1e-7)
  expect_near(paste("termite mounds,", set, "resultant by circular"), mounds[2], as.numeric(rho.circular(doubled)), 1e-8)
}
finish()
