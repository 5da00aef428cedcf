# R 4.2.2. Usage: Rscript make-goldens.R FOLDER OUTPUT : writes the expected figures beside a copy of every table of pulls in FOLDER.
here <- dirname(sub("--file=", "", grep("--file=", commandArgs(FALSE), value = TRUE))); source(file.path(here, "reference.R"))
a <- commandArgs(TRUE); dir.create(a[2], showWarnings = FALSE, recursive = TRUE)
for (f in list.files(a[1], pattern = "csv$", full.names = TRUE)) {
  d <- read.csv(f); d <- d[!is.na(d$value), ]; if (any(!d$part %in% c("A", "B"))) next
  if (!is.null(d$block)) names(d)[names(d) == "block"] <- "session"
  s <- sd(residuals(lm(value ~ factor(install), d)))
  out <- list(); sess <- if (is.null(d$session)) 1 else length(unique(d$session))
  try_ <- function(e) tryCatch(e, error = function(x) NULL)
  fixed <- sess + 1; ninst <- length(unique(d$install))
  for (dr in c("none", "linear", "quadratic")) {
    need <- fixed + (dr == "linear") + 2 * (dr == "quadratic")
    r <- list(); if (ninst > need) { r$ownData <- try_(own_ref(d, dr, margin = 1.5)); r$installMeans <- try_(means_ref(d, dr)) }
    for (rec in list(c(.5, 4), c(1, 20))) r[[sprintf("record_%g_%g", rec[1], rec[2])]] <- try_(record_ref(d, dr, sr0 = rec[1] * 1.2, nur = rec[2], margin = 1.5))
    r$recordBoth <- try_(record_ref(d, dr, sr0 = .8, nur = 6, sp0 = 1.1, nup = 10, margin = 1.5))
    r$tippingScatter <- try_(tipping_ref(d, dr)); r$recordF_0.6_4 <- try_(recordf_ref(d, .6, 4, dr))
    out[[dr]] <- r
  }
  if (!is.null(d$iat_c) && ninst > fixed) out$covariateIat <- list(ownData = try_(own_ref(d, "none", "iat_c", margin = 1.5)), record_0.5_4 = try_(record_ref(d, "none", "iat_c", sr0 = .6, nur = 4, margin = 1.5)))
  out$randomisationP <- try_(randomisation_ref(d)); out$returnCheck <- try_(return_ref(d))
  id <- sub(".csv", "", basename(f)); write.csv(d, file.path(a[2], basename(f)), row.names = FALSE, quote = FALSE)
  write_json(c(list(id = id, margin = 1.5, note = "record_X_N: refit scatter 1.2*X with N degrees of freedom; recordBoth: refit 0.8 (6), pull 1.1 (10)"), out),
             file.path(a[2], paste0(id, ".json")), auto_unbox = TRUE, digits = 10, pretty = TRUE, null = "null")
  cat(id, "\n")
}
