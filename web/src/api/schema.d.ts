// Made by `npm run gen:api` from the OpenAPI description of the server. Do not edit.

export interface paths {
    "/api/alive": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** A sign of life, with the digest of the plan now served. */
        get: operations["alive"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/fonts.css": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Style sheet that declares the text face. */
        get: operations["sheet"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/fonts/{file}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** A file of the text face. */
        get: operations["file"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/jobs/current": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The plan in short: lifts, verdicts and what governs each. */
        get: operations["current_job"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/jobs/current/lifts/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** One lift: every finding with its working, the steps, the figures. */
        get: operations["current_lift"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/jobs/current/lifts/{id}/chart.svg": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Load chart of a lift with the point it uses. */
        get: operations["chart"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/jobs/current/lifts/{id}/elevation.svg": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Side view of a lift, to scale. */
        get: operations["elevation"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/jobs/current/lifts/{id}/movement.svg": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Movement of the boom of a lift, a picture a step. */
        get: operations["movement"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/jobs/current/lifts/{id}/stands.svg": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Ground around the landing of a lift, by what a stand there would give. */
        get: operations["stands"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/jobs/current/lifts/{id}/way-in.svg": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Way to the stand of a lift, from above and as a profile. */
        get: operations["way_in"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/jobs/current/lifts/{id}/way-out.svg": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Way back from the stand of a lift, from above and as a profile. */
        get: operations["way_out"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/jobs/current/plan-sheet.pdf": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The plan sheet for the supervisor. */
        get: operations["plan_sheet"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/jobs/current/plan.json": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The plan itself, as the engine made it: ids, SI values, sources, working. */
        get: operations["plan_json"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/texts": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Words of the client's own buttons and headings. */
        get: operations["texts"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
}
export type webhooks = Record<string, never>;
export interface components {
    schemas: {
        /** @description A sign of life. */
        AliveView: {
            /** @description Digest of the plan now served. */
            digest: string;
            /** @description Version of the server. */
            version: string;
        };
        /**
         * @description How demand and limit of a finding stand to each other.
         * @enum {string}
         */
        ComparisonCode: "at-most" | "at-least";
        /** @description A named value. */
        FactView: {
            /** @description How sure it is, where that is known. */
            certainty?: string | null;
            /** @description What it is. */
            name: string;
            /** @description Its value, with unit. */
            text: string;
        };
        /** @description One check's result. */
        FindingView: {
            /** @description Name of the check. */
            check: string;
            comparison?: components["schemas"]["ComparisonCode"] | null;
            demand?: components["schemas"]["Measure"] | null;
            /** @description Stable id of the check. */
            id: string;
            limit?: components["schemas"]["Measure"] | null;
            /** @description What to do. */
            remedies: string[];
            reserve?: components["schemas"]["ReserveView"] | null;
            /** @description What was found and by how much. */
            sentence: string;
            /** @description Where the rule comes from. */
            sources: string[];
            status: components["schemas"]["StatusView"];
            /** @description Steps of the calculation. */
            working: components["schemas"]["StepView"][];
        };
        /** @description The finding that decides a verdict, in short. */
        Governing: {
            /** @description Name of the check. */
            check: string;
            reserve?: components["schemas"]["ReserveView"] | null;
            /** @description The sentence. */
            sentence: string;
            status: components["schemas"]["StatusView"];
        };
        /** @description An input with where it came from. */
        InputView: {
            /** @description How sure. */
            certainty: string;
            /** @description What it is. */
            name: string;
            /** @description File and key. */
            place: string;
            /** @description The value as written. */
            value: string;
        };
        /** @description A job's plan in short. */
        JobView: {
            /** @description Cautions that belong on every screen with a verdict. */
            cautions: string[];
            /** @description Date of the work, as written in the job. */
            date: string;
            /** @description Digest of the plan: changes with any change of the plan. */
            digest: string;
            /** @description What to do in an emergency. */
            emergency: string[];
            /** @description What was read. */
            inputs: components["schemas"]["InputView"][];
            /** @description True for demonstrations with invented data; to be said wherever a verdict is shown. */
            invented: boolean;
            /** @description Job name. */
            job: string;
            language: components["schemas"]["Language"];
            /** @description Lifts in the order of the job. */
            lifts: components["schemas"]["LiftLine"][];
            /** @description What made the plan, and the digest of the plan, in words. */
            made_by: string;
            /** @description Planner. */
            planner: string;
            /** @description Site name. */
            site: string;
            /** @description How many lifts, and how many of each verdict, in words. */
            summary: string;
            units: components["schemas"]["Units"];
            /** @description The worst verdict of the lifts. */
            verdict: components["schemas"]["VerdictView"];
            /** @description Warnings about the inputs. */
            warnings: string[];
        };
        /**
         * @description A language that every text exists in.
         * @enum {string}
         */
        Language: "en" | "es";
        /** @description A lift in the overview. */
        LiftLine: {
            governing?: components["schemas"]["Governing"] | null;
            /** @description Id, unique in the job. */
            id: string;
            /** @description Load with its mass. */
            load: string;
            /** @description Machine. */
            machine: string;
            /** @description Name for people. */
            name: string;
            /** @description Where it is set down or picked up, with the word for which. */
            place: string;
            verdict: components["schemas"]["VerdictView"];
        };
        /** @description A lift in full. */
        LiftView: {
            /** @description Where to stop, as seen from the cab: landing and task, front tyres, aim, heading. */
            approach: components["schemas"]["FactView"][];
            /** @description Machine, attachment, load. */
            carried: components["schemas"]["FactView"][];
            /** @description Cautions that belong on every screen with a verdict. */
            cautions: string[];
            /** @description For a lift that works nowhere: changes that were tried and would do. */
            changes: string[];
            /** @description What to do in an emergency. */
            emergency: string[];
            /** @description Every finding, in the order of the checks. */
            findings: components["schemas"]["FindingView"][];
            governing?: components["schemas"]["Governing"] | null;
            /** @description Index into `findings` of the finding that governs. */
            governing_index: number;
            /** @description True if there is a load chart. */
            has_chart: boolean;
            /** @description True if there is a side view. */
            has_elevation: boolean;
            /** @description True if there is a picture of the boom's movement. */
            has_movement: boolean;
            /** @description True if there is a picture of the ground by what a stand there would give. */
            has_stands: boolean;
            /** @description True if there is a picture of the way to the stand, or of why there is none. */
            has_way_in: boolean;
            /** @description True if there is a picture of the way back. */
            has_way_out: boolean;
            /** @description Id, unique in the job. */
            id: string;
            /** @description True for demonstrations with invented data. */
            invented: boolean;
            language: components["schemas"]["Language"];
            /** @description Name for people. */
            name: string;
            /** @description Other stands that work, the best first. */
            other_stands: components["schemas"]["OtherStandView"][];
            /** @description What the boom does there, and the slopes. */
            pose: components["schemas"]["FactView"][];
            /** @description East and north of the stand, for those who set it out. */
            position: components["schemas"]["FactView"];
            /** @description Whether the stand was stated or found, and how far off it may be; only the first for a lift that is refused. */
            stand_told: components["schemas"]["FactView"][];
            /** @description What the operator does, in order. */
            steps: string[];
            /** @description How much more of one thing it bears until it is no-go; empty for a no-go. */
            tolerances: components["schemas"]["FactView"][];
            units: components["schemas"]["Units"];
            verdict: components["schemas"]["VerdictView"];
            /** @description The way in and out, or why there is none; empty where none was looked for. */
            way: components["schemas"]["FactView"][];
            /** @description What is to be done about a way, what it rests on and what was not looked at. */
            way_notes: string[];
            /** @description Force on each wheel or pad, most loaded first. */
            wheels: components["schemas"]["FactView"][];
        };
        /** @description A measured value. */
        Measure: {
            /**
             * Format: double
             * @description The value in the coherent SI unit.
             */
            si: number;
            /** @description Symbol of that unit; empty for shares and plain numbers. */
            si_unit: string;
            /** @description With unit, in the reader's units. */
            text: string;
        };
        /** @description Another stand that works for a lift. Its number is its place in the list, as in the picture. */
        OtherStandView: {
            /** @description East and north of the middle of the front axle, and where the machine heads. */
            at: string;
            /** @description The check that governs there, and the least that is left of those that go with the place. */
            governs: string;
            /** @description How far off it may be. */
            off: string;
            verdict: components["schemas"]["VerdictView"];
        };
        /**
         * @description Size of the paper.
         * @enum {string}
         */
        Paper: "a4" | "letter";
        /** @description A piece of a formula or symbol. */
        Piece: {
            /** @description True for an index, set lowered. */
            lowered: boolean;
            text: string;
        };
        /** @description A problem as sent (RFC 9457). */
        Problem: {
            /** @description What happened this time and what to do, in English. */
            detail: string;
            /**
             * Format: int32
             * @description HTTP status.
             */
            status: number;
            /** @description What kind of problem, in English. */
            title: string;
            /** @description Stable name of the kind of problem, a URN. */
            type: string;
        };
        /** @description How much is left before the limit. */
        ReserveView: {
            /**
             * Format: double
             * @description Share of the limit: 0 at the limit, negative beyond.
             */
            share: number;
            /** @description In words, with the number. */
            text: string;
        };
        /**
         * @description What a check says, best to worst.
         * @enum {string}
         */
        StatusCode: "go" | "condition" | "cannot-tell" | "no-go" | "stop";
        /** @description A check's status with its word. */
        StatusView: {
            code: components["schemas"]["StatusCode"];
            /** @description The status in words. */
            word: string;
        };
        /** @description One step of a calculation. */
        StepView: {
            /** @description Formula in symbols. */
            formula: components["schemas"]["Piece"][];
            result: components["schemas"]["SymbolView"];
            /** @description Where the formula comes from. */
            source: string;
            /** @description What this step computes. */
            title: string;
            /** @description Symbols with their values. */
            values: components["schemas"]["SymbolView"][];
        };
        /** @description A symbol of a formula and its value. */
        SymbolView: {
            symbol: components["schemas"]["Piece"][];
            value: components["schemas"]["Measure"];
        };
        /** @description The words of the client's own buttons and headings. */
        TextsView: {
            language: components["schemas"]["Language"];
            /** @description Text by id; texts that need values are not among them. */
            texts: {
                [key: string]: string;
            };
        };
        /**
         * @description Units of every value in an answer.
         * @enum {string}
         */
        Units: "si" | "us";
        /**
         * @description Go, go with conditions, no-go.
         * @enum {string}
         */
        VerdictCode: "go" | "go-with-conditions" | "no-go";
        /** @description A verdict with its word. */
        VerdictView: {
            code: components["schemas"]["VerdictCode"];
            /** @description What the verdict means, one sentence. */
            means: string;
            /** @description The verdict in words. */
            word: string;
        };
    };
    responses: never;
    parameters: never;
    requestBodies: never;
    headers: never;
    pathItems: never;
}
export type $defs = Record<string, never>;
export interface operations {
    alive: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AliveView"];
                };
            };
        };
    };
    sheet: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/css": string;
                };
            };
        };
    };
    file: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description File name */
                file: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "font/ttf": number[];
                };
            };
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    current_job: {
        parameters: {
            query?: {
                /** @description Language of all texts. Without it: `en`. */
                lang?: components["schemas"]["Language"];
                /** @description Units of all values. Without it: `si`. */
                units?: components["schemas"]["Units"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["JobView"];
                };
            };
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    current_lift: {
        parameters: {
            query?: {
                /** @description Language of all texts. Without it: `en`. */
                lang?: components["schemas"]["Language"];
                /** @description Units of all values. Without it: `si`. */
                units?: components["schemas"]["Units"];
            };
            header?: never;
            path: {
                /** @description Id of the lift */
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LiftView"];
                };
            };
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    chart: {
        parameters: {
            query?: {
                /** @description Language of all texts. Without it: `en`. */
                lang?: components["schemas"]["Language"];
                /** @description Units of all values. Without it: `si`. */
                units?: components["schemas"]["Units"];
                /** @description Width at which the drawing will be shown, in CSS pixels: text keeps its size. Without it: 720. */
                width?: number;
            };
            header?: never;
            path: {
                /** @description Id of the lift */
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "image/svg+xml": string;
                };
            };
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    elevation: {
        parameters: {
            query?: {
                /** @description Language of all texts. Without it: `en`. */
                lang?: components["schemas"]["Language"];
                /** @description Units of all values. Without it: `si`. */
                units?: components["schemas"]["Units"];
                /** @description Width at which the drawing will be shown, in CSS pixels: text keeps its size. Without it: 720. */
                width?: number;
            };
            header?: never;
            path: {
                /** @description Id of the lift */
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "image/svg+xml": string;
                };
            };
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    movement: {
        parameters: {
            query?: {
                /** @description Language of all texts. Without it: `en`. */
                lang?: components["schemas"]["Language"];
                /** @description Units of all values. Without it: `si`. */
                units?: components["schemas"]["Units"];
                /** @description Width at which the drawing will be shown, in CSS pixels: text keeps its size. Without it: 720. */
                width?: number;
            };
            header?: never;
            path: {
                /** @description Id of the lift */
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "image/svg+xml": string;
                };
            };
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    stands: {
        parameters: {
            query?: {
                /** @description Language of all texts. Without it: `en`. */
                lang?: components["schemas"]["Language"];
                /** @description Units of all values. Without it: `si`. */
                units?: components["schemas"]["Units"];
                /** @description Width at which the drawing will be shown, in CSS pixels: text keeps its size. Without it: 720. */
                width?: number;
            };
            header?: never;
            path: {
                /** @description Id of the lift */
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "image/svg+xml": string;
                };
            };
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    way_in: {
        parameters: {
            query?: {
                /** @description Language of all texts. Without it: `en`. */
                lang?: components["schemas"]["Language"];
                /** @description Units of all values. Without it: `si`. */
                units?: components["schemas"]["Units"];
                /** @description Width at which the drawing will be shown, in CSS pixels: text keeps its size. Without it: 720. */
                width?: number;
            };
            header?: never;
            path: {
                /** @description Id of the lift */
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "image/svg+xml": string;
                };
            };
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    way_out: {
        parameters: {
            query?: {
                /** @description Language of all texts. Without it: `en`. */
                lang?: components["schemas"]["Language"];
                /** @description Units of all values. Without it: `si`. */
                units?: components["schemas"]["Units"];
                /** @description Width at which the drawing will be shown, in CSS pixels: text keeps its size. Without it: 720. */
                width?: number;
            };
            header?: never;
            path: {
                /** @description Id of the lift */
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "image/svg+xml": string;
                };
            };
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    plan_sheet: {
        parameters: {
            query?: {
                /** @description Language of all texts. Without it: `en`. */
                lang?: components["schemas"]["Language"];
                /** @description Units of all values. Without it: `si`. */
                units?: components["schemas"]["Units"];
                /** @description Paper size. Without it: `a4`. */
                paper?: components["schemas"]["Paper"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/pdf": number[];
                };
            };
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            500: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    plan_json: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": unknown;
                };
            };
        };
    };
    texts: {
        parameters: {
            query?: {
                /** @description Language of all texts. Without it: `en`. */
                lang?: components["schemas"]["Language"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TextsView"];
                };
            };
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
}
