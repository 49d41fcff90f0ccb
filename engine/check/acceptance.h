/* Findings that the maker accepts: see project/accepted.h. */
#pragma once

#include "project/accepted.h"
#include "finding.h"

/* Marks the findings that are accepted, with reason and date, and moves them behind the others. */
void rw_findings_accept (GPtrArray *findings, const RwAccepted *accepted);

/* How many of a severity there are that are not accepted. */
guint rw_findings_open (const GPtrArray *findings, RwSeverity severity);
