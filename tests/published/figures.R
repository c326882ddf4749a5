# What the checks beside this file share: asking core for a figure, and comparing it.
core_figures <- commandArgs(trailingOnly = TRUE)[1]
failed <- FALSE

# The figures that core gives for `numbers`.
core <- function(words, numbers) {
  lines <- system2(core_figures, words, input = formatC(numbers, digits = 17, format = "g"), stdout = TRUE)
  as.numeric(strsplit(lines[length(lines)], " ")[[1]])
}

# Places as core reads them: x and y in turn.
places <- function(x, y) as.vector(rbind(x, y))

expect_near <- function(what, found, expected, tolerance) {
  good <- length(found) == 1 && is.finite(found) && abs(found - expected) <= tolerance
  cat(sprintf("%s %s: found %s, expected %s within %s\n", if (good) "ok    " else "FAILED", what,
              format(found, digits = 10), format(expected, digits = 10), format(tolerance)))
  if (!good) failed <<- TRUE
}

finish <- function() quit(status = if (failed) 1 else 0)
