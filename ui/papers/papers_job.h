/* Work on papers off the window's thread: pages to look at, or files.
 *
 * A job works on copies, so that the document may go on changing.  What came of it is told on the thread that
 * started it.
 */
#pragma once

#include <gio/gio.h>

#include "io/papers.h"

typedef struct _RwPapersJob RwPapersJob;

typedef enum
{
  RW_PAPERS_LOOK,   /* a set of pages; writes nothing */
  RW_PAPERS_FILE,   /* one PDF at the path */
  RW_PAPERS_FOLDER, /* all formats into the folder that path names */
} RwPapersTask;

/* What a job has made, or why it has not. */
typedef struct
{
  RwPaperSet   *set;   /* LOOK: may be taken over by leaving NULL here */
  int           pages; /* FILE: in the PDF */
  int           files; /* FOLDER */
  const char   *path;
  const GError *error; /* RW_FILE_ERROR_STOPPED where it was stopped */
} RwPapersOutcome;

/* data is the object that was given, which is kept until then. */
typedef void (*RwPapersDone) (RwPapersJob *job, RwPapersOutcome *outcome, gpointer data);

/* Starts a job; path is NULL for LOOK.  The reference is the caller's. */
RwPapersJob *rw_papers_job_start (const RwProject       *project,
                                  const RwPapersOptions *options,
                                  RwPapersTask           task,
                                  const char            *path,
                                  RwPapersDone           done,
                                  GObject               *data);

/* Asks it to stop; it ends soon, and says so. */
void   rw_papers_job_stop  (RwPapersJob *job);
/* How far it is, from 0 to 1. */
double rw_papers_job_share (RwPapersJob *job);
void   rw_papers_job_unref (RwPapersJob *job);
