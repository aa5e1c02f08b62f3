//! Bytes of a job folder to a Job, or every fault at once
