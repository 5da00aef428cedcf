# What `size` must answer: generalised least squares with the scatter taken as known, degrees of freedom from the
# expected information, power from R's non-central t, everything else by search. Dense matrices, no shortcut:
# slow and plain on purpose, so that it shares nothing with the program that it checks.
# Sourced by make-grid.R; size_ref() is the entry.
suppressMessages(library(jsonlite))
plan_ <- function(order, n, interval = 5, swap = 20) {
  part <- strsplit(order, "")[[1]]; t <- NULL; clock <- 0
  for (i in seq_along(part)) { if (i > 1) clock <- clock + swap; for (k in 1:n) { t <- c(t, clock); clock <- clock + interval } }
  list(part = part, inst = rep(seq_along(part), each = n), B = rep(part == "B", each = n), t = t, minutes = clock)
}
core_ <- function(order, n, sp, sr, nur, nup, drift, interval, swap) {
  p <- plan_(order, n, interval, swap); X <- cbind(1, p$B); if (drift) X <- cbind(X, p$t - mean(p$t))
  df0 <- length(p$part) - qr(rowsum(X, p$inst) / n)$rank                       # install degrees of freedom
  if (df0 < 1 && nur == 0) return(NULL)                                        # cannot be judged
  if (length(p$t) - qr(X)$rank < 1 && nup == 0) return(NULL)                   # pull scatter cannot be had
  if (sr == 0) stop("refit scatter 0: use a small positive value or a record")
  Z <- model.matrix(~ factor(p$inst) - 1); ZZ <- Z %*% t(Z); I <- diag(length(p$t)); V <- sr^2 * ZZ + sp^2 * I; Vi <- solve(V); C <- solve(t(X) %*% Vi %*% X)
  P <- Vi - Vi %*% X %*% C %*% t(X) %*% Vi; G <- list(ZZ, I); info <- matrix(0, 2, 2)
  for (i in 1:2) for (j in 1:2) info[i, j] <- .5 * sum((P %*% G[[i]]) * t(P %*% G[[j]]))
  if (nur > 0) info[1, 1] <- info[1, 1] + nur / (2 * sr^4); if (nup > 0) info[2, 2] <- info[2, 2] + nup / (2 * sp^4)
  v <- C[2, 2]; w <- Vi %*% X %*% C[, 2]; g <- sapply(G, function(Gi) sum(w * (Gi %*% w)))
  df <- if (n == 1 && nur == 0 && nup == 0) df0 else 2 * v^2 / sum(g * solve(info, g))
  # pull scatter gone: weighted by refit scatter alone, on install means
  Xm <- rowsum(X, p$inst) / n; vl <- sr^2 * solve(crossprod(Xm))[2, 2]
  list(se = sqrt(v), df = df, minutes = p$minutes, limitSe = if (df0 < 1 && nur == 0) NA else sqrt(vl), limitDf = df0 + nur, part = p$part)
}
power_ <- function(se, df, d, alpha) { q <- qt(1 - alpha / 2, df); suppressWarnings(1 - pt(q, df, d / se) + pt(-q, df, d / se)) }
gain_ <- function(se, df, alpha, power) uniroot(function(d) power_(se, df, d, alpha) - power, c(0, 60 * se), tol = 1e-11)$root
size_ref <- function(order, n, sp, sr, nur = 0, nup = 0, gain, alpha = .05, power = .8, drift = FALSE, interval = 5, swap = 20) {
  k <- core_(order, n, sp, sr, nur, nup, drift, interval, swap); nA <- sum(strsplit(order, "")[[1]] == "A"); nB <- nchar(order) - nA
  reach <- function(o, m) { q <- core_(o, m, sp, sr, nur, nup, drift, interval, swap); !is.null(q) && power_(q$se, q$df, gain, alpha) >= power }
  pulls <- NULL; for (m in 1:100) if (reach(order, m)) { pulls <- m; break }
  installs <- NULL; for (m in 3:30) if (reach(paste(rep(c("A", "B"), length.out = m), collapse = ""), n)) { installs <- m; break }
  out <- list(order = order, pulls = n, pullScatter = sp, refitScatter = sr, refitDf = nur, pullDf = nup, gain = gain, alpha = alpha, powerWanted = power, drift = drift)
  c(out, list(standardError = k$se, degreesOfFreedom = k$df, power = if (is.null(k)) NULL else power_(k$se, k$df, gain, alpha), detectableGain = if (is.null(k)) NULL else gain_(k$se, k$df, alpha, power),
    minutes = plan_(order, n, interval, swap)$minutes, limit = if (is.null(k)) NULL else gain_(k$limitSe, k$limitDf, alpha, power),
    leastRandomisationP = (if (nA == nB) 2 else 1) / choose(nA + nB, nB), pullsNeeded = pulls, installsNeeded = installs))
}
