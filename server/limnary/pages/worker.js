/* A worker that does nothing: the check page registers it to learn whether the browser lets it. */
